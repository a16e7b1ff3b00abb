/** A run of lettering: `unit` runs are printed muted. */
export interface Run {
  readonly text: string
  readonly unit: boolean
}

/** A figure in the three columns of a leader; `unit` and `tolerance` are empty where a figure does not come apart. */
export interface FigureColumns {
  readonly number: string
  readonly unit: string
  readonly tolerance: string
  /** The same figure in one line. */
  readonly runs: readonly Run[]
}

const thinSpace = '\u202f' // narrow no-break space, between a number and its unit (ISO 80000-1, 7.1.4: a space)

const blank = '[\\s\\u00a0\\u2009\\u202f]'
const unit = '(?:[%"″\'′]|°[CF]?|[Ω\\p{L}][\\p{L}Ω²³/·⋅]*(?:(?<=\\p{L})[23])?(?: (?:ft|m)(?!\\p{L}))?)'
// A unit stands behind a digit or a fraction: `860 mm`, `7⅜ in`, `2.5 mm²`, `25 lb ft`, `30 °C`.
const unitWord = new RegExp(`(?<=\\p{N}${blank}*)${unit}(?!\\p{N})`, 'gu')
const joiners = /^(to|and|or|by|x)$/i
const apart = new RegExp(`^([£$€]?[−-]?[\\p{N}.,/ \\u2009-]*\\p{N})${blank}*(${unit})?${blank}*(±.*)?$`, 'u')

/** A figure as written, its units marked, the space before a unit narrow and without a break. No character but blanks changes. */
export function typeset(text: string): Run[] {
  const runs: Run[] = []
  let from = 0
  for (const match of text.matchAll(unitWord)) {
    if (joiners.test(match[0])) continue
    push(runs, narrow(text.slice(from, match.index)), false)
    push(runs, match[0], true)
    from = match.index + match[0].length
  }
  push(runs, text.slice(from).replace(/± /g, `±${thinSpace}`), false)
  return runs
}

function narrow(text: string): string {
  return text.replace(/(?<=\p{N})[\s\u00a0\u2009]+$/u, thinSpace).replace(/± /g, `±${thinSpace}`)
}

function push(runs: Run[], text: string, unit: boolean): void {
  if (text !== '') runs.push({ text, unit })
}

/** Takes a figure apart for a table: `860 mm ± 2 mm` stands as 860, mm, ± 2 mm. */
export function figureColumns(text: string): FigureColumns {
  const runs = typeset(text)
  const [, number, unitText = '', tolerance = ''] = apart.exec(text) ?? []
  if (number === undefined || /\p{N} *[-–] *\p{N}/u.test(number.replace(/^(\d+)-(\d+\/)/, '$1 $2')))
    return { number: text, unit: '', tolerance: '', runs }
  return { number, unit: unitText, tolerance: tolerance.replace(/± ?/, `±${thinSpace}`), runs }
}
