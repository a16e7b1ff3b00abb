import {
  closed,
  figure,
  flag,
  listOf,
  named,
  number,
  oneOf,
  orNull,
  type Schema,
  text,
  told,
  words,
} from './schema-makers.ts'

const si = orNull({
  anyOf: [
    closed({ value: number, unit: text }),
    closed({ value: { type: 'null' }, low: figure, high: figure, unit: text }),
  ],
})

/** What every figure has. */
const figureKeys: Record<string, Schema> = {
  text: told('As written, with its about, bound, ± and range words', text),
  value: told('In `unit`; null for a range and a thread', figure),
  low: told('In `unit`: a range’s lower end, or a bound', figure),
  high: told('In `unit`: a range’s upper end, or a bound', figure),
  bound: oneOf('min', 'max', null),
  unit: told('Identifier of the unit, such as mm, lbf_ft, money:GBP', text),
  ucum: told('Code of the Unified Code for Units of Measure, where it has one', words),
  dimension: text,
  si: told('In coherent SI units, unrounded', si),
  plus: told('In `unit`; null where no tolerance was written', figure),
  minus: told('In `unit`, a positive size', figure),
  approximate: flag,
}

const thread = closed({ diameter: number, pitch: figure })
const line: Schema = { type: 'integer', minimum: 1 }

/** Where something is written: lines and UTF-16 columns from 1. */
export const placeKeys: Record<string, Schema> = {
  file: told('Relative to the build folder, with /', text),
  line,
  column: line,
}

const url = told('Relative to the published record', text)
const placed = closed({ ...figureKeys, ...placeKeys }, { url, thread })

/** What the record is made of wherever it holds a figure, words or a nested mapping. */
export const figureDefinitions: Record<string, Schema> = {
  bareFigure: closed(figureKeys, { thread }),
  placedFigure: placed,
  measurement: closed(
    { path: text, ...figureKeys, with: words, session: words, ...placeKeys, superseded: flag },
    { url, thread },
  ),
  quantity: placed,
  said: told('What a note says: words, a figure, a list of words, or a mapping of these', {
    anyOf: [
      { type: ['string', 'null'] },
      listOf(text),
      named('placedFigure'),
      { type: 'object', not: { required: ['text'] }, additionalProperties: named('said') },
    ],
  }),
  amount: closed({
    amount: { type: 'string', pattern: '^-?[0-9]+([.][0-9]+)?$' },
    currency: { type: 'string', pattern: '^[A-Z]{3}$' },
  }),
  sum: told('An exact decimal in the build’s currency', { type: 'string', pattern: '^-?[0-9]+([.][0-9]+)?$' }),
}
