// Shows what the query finds. A classic script, so that it runs from a disk; the query and the index are loaded before it.
;(() => {
  const most = 60 // hits on the page
  const examples = ['fuel tank', '860 mm', 'about 4 ft', '>200 mm', '60..70 L', 'M8', '25 A fuse']
  const longest = 240 // characters of a sentence that an address names
  const key = '#find='

  class RecordSearch extends HTMLElement {
    connectedCallback() {
      const { oddlegSearch, oddlegIndex } = globalThis
      if (oddlegSearch === undefined || oddlegIndex === undefined || this.open !== undefined) return
      this.open = oddlegSearch.openIndex(oddlegIndex)
      this.replaceChildren(...this.parts())
      this.input.value = asked()
      this.show()
      this.input.focus()
      // What mistyped words need is made while nobody waits, and the query run in.
      setTimeout(() => {
        this.open.vocabulary.prepare()
        for (const words of ['length', 'length 1 mm', 'tape length'])
          globalThis.oddlegSearch.search(this.open, words, most)
      }, 200)
      addEventListener('hashchange', () => this.ask(asked()))
    }

    parts() {
      const label = make('label', { className: 'ask' }, 'What to find')
      this.input = make('input', { type: 'search', autocomplete: 'off', spellcheck: false })
      this.input.addEventListener('input', () => {
        this.show()
        keep(this.input.value)
      })
      label.append(this.input)
      this.count = make('p', { className: 'count' })
      this.count.setAttribute('role', 'status')
      this.hits = make('ol', { className: 'hits' })
      this.hits.setAttribute('aria-label', 'Hits')
      return [label, this.examples(), this.count, this.hits]
    }

    examples() {
      const list = make('p', { className: 'examples' }, 'Such as ')
      for (const [index, example] of examples.entries())
        list.append(index === 0 ? '' : ', ', make('a', { href: key + encodeURIComponent(example) }, example))
      return list
    }

    ask(words) {
      if (words === this.input.value) return
      this.input.value = words
      this.show()
    }

    show() {
      const words = this.input.value.trim()
      const answer = words === '' ? null : globalThis.oddlegSearch.search(this.open, words, most)
      this.count.textContent = answer === null ? '' : countOf(answer)
      this.hits.replaceChildren(
        ...(answer === null ? [] : answer.hits.map(hit => make('li', { className: hit.kind }, ...linesOf(hit)))),
      )
    }
  }

  const asked = () => {
    try {
      return location.hash.startsWith(key) ? decodeURIComponent(location.hash.slice(key.length)) : ''
    } catch {
      return ''
    }
  }

  /** The way back from a hit leads to the same hits. */
  const keep = words => history.replaceState(null, '', words.trim() === '' ? '#find=' : key + encodeURIComponent(words))

  const countOf = ({ total, isPartial, query, hits }) => {
    if (total === 0) return nothing(query)
    const count = total === 1 ? 'One hit' : `${total} hits`
    const partial = isPartial ? ', each without one of the words' : ''
    return `${count}${partial}${total > hits.length ? `; these are the best ${hits.length}, say more to narrow them` : ''}`
  }

  const nothing = ({ quantities, words }) => {
    const sizes = quantities.map(({ text }) => text).join(' and ')
    if (sizes === '') return 'No hit. Fewer words, or others, may find it.'
    return words.length === 0
      ? `Nothing in the record is ${sizes}, in any unit.`
      : `Nothing in the record is ${sizes} and says ${words.join(' ')}.`
  }

  const linesOf = hit => {
    const lead = make(
      'a',
      { className: 'lead written', href: hrefOf(hit) },
      ...headOf(hit),
      make('span', { className: 'ln' }),
      balloonOf(hit),
    )
    const said =
      hit.said.text === '' || isRepeated(hit)
        ? []
        : [make('p', { className: isTold(hit) ? 'words' : 'words said' }, ...marked(hit.said))]
    return [lead, ...said, make('p', { className: 'where' }, ...placeOf(hit))]
  }

  /** A figure at the head of a note says no more than its name and itself. */
  const isRepeated = ({ unit, label, text, said }) => {
    if (unit === null || label === null || !said.text.endsWith(`: ${text}`)) return false
    return label.text.endsWith(`: ${said.text.slice(0, -text.length - 2)}`)
  }

  /** Things are told by the tool; all else is what the builder wrote. */
  const isTold = ({ kind }) => kind === 'part' || kind === 'circuit' || kind === 'connector'

  /** One figure of `720 x 340 mm` says nothing alone: there the sentence below says it. */
  const isBare = ({ unit, label, text }) => label !== null && unit !== '1' && /^[\d.,]+$/.test(text)

  const headOf = hit => {
    const name = hit.label === null ? [] : marked(hit.label)
    const figure = hit.unit === null || isBare(hit) ? [] : [make('strong', {}, hit.text)]
    const title = hit.kind === 'job' ? 'Job' : hit.title
    const words =
      name.length > 0 || figure.length > 0
        ? [...figure, figure.length > 0 && name.length > 0 ? ' ' : '', ...name]
        : [title]
    return [make('span', { className: 'whole' }, ...words)]
  }

  const balloonOf = ({ number }) => {
    const balloon = make('span', { className: number === null ? 'b sq' : 'b' })
    balloon.append(
      make('span', { className: 'vh' }, number === null ? ', note ' : ', session '),
      number === null ? 'build' : String(number),
    )
    return balloon
  }

  const placeOf = ({ date, file, line, thing, url }) => {
    const day = date === '' ? [] : [make('time', { dateTime: date }, longDate(date)), ' · ']
    const place = make('span', { className: 'path' }, `${file}:${line}`)
    if (thing === null || thing.address === '' || thing.address === url) return [...day, place]
    const name = make('span', { className: 'vh' }, `: ${thing.name}`)
    return [...day, place, ' · ', make('a', { href: `../${thing.address}` }, 'its page', name)]
  }

  const longDate = date =>
    new Date(`${date}T00:00:00Z`).toLocaleDateString('en-GB', {
      day: 'numeric',
      month: 'long',
      year: 'numeric',
      timeZone: 'UTC',
    })

  /** A browser that can marks the very sentence; all others go to its block. */
  const hrefOf = ({ kind, url, said }) => {
    const exact = kind === 'text' && url.includes('#') && 'fragmentDirective' in document && said.text.length <= longest
    return `../${url}${exact ? `:~:text=${encodeURIComponent(said.text).replaceAll('-', '%2D')}` : ''}`
  }

  const marked = ({ text, marks }) => {
    const pieces = []
    let from = 0
    for (const { start, end } of marks) {
      pieces.push(text.slice(from, start), make('mark', {}, text.slice(start, end)))
      from = end
    }
    return [...pieces, text.slice(from)].filter(piece => piece !== '')
  }

  /** Words go in as text only, whatever they hold. */
  const make = (name, properties, ...children) => {
    const element = Object.assign(document.createElement(name), properties)
    element.append(...children)
    return element
  }

  customElements.define('record-search', RecordSearch)
})()
