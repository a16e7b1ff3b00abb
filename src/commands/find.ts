import { styleText } from 'node:util'
import { publicationOf, searchIndexOf } from '../build.ts'
import type { Hit, MarkedWords } from '../search/hit.ts'
import { type Answer, openIndex, search } from '../search/query.ts'
import { type BuildOptions, CannotRun } from './options.ts'
import { readBuild, requireEdition } from './read-build.ts'
import { showsColour } from './report-findings.ts'

interface FindOptions extends BuildOptions {
  readonly edition: string
}

const mostOnTerminal = 40 // hits; more scroll away, and a pipe gets all

/** `oddleg find WORDS…`: where something was measured, fitted or written. Nothing found is no error. */
export async function find(words: readonly string[], options: FindOptions): Promise<number> {
  const asked = words.join(' ').trim()
  if (asked === '')
    throw new CannotRun('Unexpected empty words, expected what to find, such as `fuel tank` or `860 mm`.')
  const built = await readBuild(options)
  requireEdition(built, options.edition)
  const isShort = process.stdout.isTTY === true && !options.json
  const answer = search(
    openIndex(searchIndexOf(publicationOf(built, options.edition))),
    asked,
    isShort ? mostOnTerminal : undefined,
  )
  if (options.json) process.stdout.write(`${JSON.stringify({ hits: answer.hits.map(rowOf) }, null, 2)}\n`)
  else tell(answer, asked)
  return 0
}

function rowOf({ kind, path, text, value, unit, file, line, column, url, session }: Hit): Record<string, unknown> {
  const figure = unit === null ? {} : { value, unit }
  return { kind, ...(path === null ? {} : { path }), text, ...figure, file, line, column, url, session }
}

function tell({ hits, total, isPartial }: Answer, asked: string): void {
  const paint = painter(showsColour(process.stdout))
  if (hits.length > 0) process.stdout.write(`${hits.map(hit => lineOf(hit, paint)).join('\n')}\n`)
  const few = total > hits.length ? `, the first ${hits.length} shown: say more to narrow it` : ''
  const partial = isPartial ? ', each without one of the words' : ''
  const count = total === 0 ? 'nothing' : total === 1 ? 'one hit' : `${total} hits`
  process.stderr.write(`${count} for ${asked}${partial}${few}\n`)
}

type Paint = (style: Parameters<typeof styleText>[0], text: string) => string

function painter(isColoured: boolean): Paint {
  return (style, text) => (isColoured ? styleText(style, text, { validateStream: false }) : text)
}

/** `content/…/note.md:31:17 measurement fuel tank: length`, then the words. */
function lineOf(hit: Hit, paint: Paint): string {
  const place = paint('bold', `${hit.file}:${hit.line}:${hit.column}`)
  const name = hit.label === null ? '' : ` ${marked(hit.label, paint)}`
  const session = hit.number === null ? '' : paint('dim', ` (session ${hit.number}, ${hit.date})`)
  const said = hit.said.text === '' ? '' : `\n  ${marked(hit.said, paint)}`
  return `${place} ${paint('cyan', hit.kind)}${name}${session}${said}`
}

function marked({ text, marks }: MarkedWords, paint: Paint): string {
  let [shown, from] = ['', 0]
  for (const { start, end } of marks) {
    shown += text.slice(from, start) + paint(['bold', 'underline'], text.slice(start, end))
    from = end
  }
  return shown + text.slice(from)
}
