// Filters and sorts a table that is whole without this script. A classic script, so that it runs from a disk.
;(() => {
  class FilterTable extends HTMLElement {
    connectedCallback() {
      const table = this.querySelector('table')
      if (table === null || this.querySelector('.filter') !== null) return
      this.addFilter(table)
      for (const [column, head] of [...table.querySelectorAll('thead th')].entries())
        if (head.textContent !== '') this.sortable(table, head, column)
    }

    addFilter(table) {
      const label = document.createElement('label')
      label.className = 'filter'
      const input = document.createElement('input')
      input.type = 'search'
      const count = document.createElement('output')
      label.append('Show only rows with', input, count)
      table.before(label)
      input.addEventListener('input', () => {
        const words = input.value.toLowerCase().split(/\s+/).filter(Boolean)
        let shown = 0
        for (const body of table.tBodies) {
          let any = false
          for (const row of body.rows) {
            if (row.classList.contains('head')) continue
            const text =
              `${body.rows[0]?.classList.contains('head') ? body.rows[0].textContent : ''} ${row.textContent}`.toLowerCase()
            row.hidden = !words.every(word => text.includes(word))
            if (!row.hidden) {
              any = true
              shown++
            }
          }
          body.hidden = !any
        }
        count.textContent = words.length === 0 ? '' : `${shown} ${shown === 1 ? 'row' : 'rows'}`
      })
    }

    sortable(table, head, column) {
      const button = document.createElement('button')
      button.type = 'button'
      button.append(...head.childNodes)
      head.append(button)
      button.addEventListener('click', () => {
        const up = head.getAttribute('aria-sort') !== 'ascending'
        for (const other of table.querySelectorAll('thead th')) other.removeAttribute('aria-sort')
        head.setAttribute('aria-sort', up ? 'ascending' : 'descending')
        for (const body of table.tBodies) {
          const rows = [...body.rows].filter(row => !row.classList.contains('head'))
          rows.sort((a, b) => compare(a.cells[column], b.cells[column]) * (up ? 1 : -1))
          body.append(...rows)
        }
      })
    }
  }

  const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })
  const compare = (a, b) => collator.compare(a?.textContent.trim() ?? '', b?.textContent.trim() ?? '')
  customElements.define('filter-table', FilterTable)
})()
