import { placeKeys } from './figure-schemas.ts'
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

const before = told('What it holds up: road, inspection', words)
const spot = { ...placeKeys, endLine: { type: 'integer', minimum: 1 }, endColumn: { type: 'integer', minimum: 1 } }

const limit = closed({
  min: figure,
  max: figure,
  unit: text,
  from: told('In words: 3 % of 12 V', text),
  who: oneOf('law', 'standard', 'maker', 'builder', 'practice'),
  source: text,
})

/** Work that is open or done, and what was asked of the record. */
export const workDefinitions: Record<string, Schema> = {
  job: closed({ id: text, text, open: flag, before, ...placeKeys }),
  temporary: closed({ id: text, what: text, part: words, until: words, before, open: flag, ...placeKeys }),
  test: closed({ what: text, result: oneOf('pass', 'fail', 'partial'), session: words, ...placeKeys }),
  point: closed({
    id: text,
    ask: text,
    before,
    open: flag,
    evidence: listOf(closed({ ref: text, ok: flag })),
  }),
  check: closed(
    {
      check: text,
      subject: text,
      aspect: words,
      verdict: oneOf('pass', 'marginal', 'fail', 'missing', 'waived'),
      result: told(
        'Unrounded; `uncertainty` is U (k = 2)',
        orNull(closed({ value: number, unit: text, uncertainty: number, worst: number })),
      ),
      limit: orNull(limit),
      inputs: listOf(closed({ path: text, value: { type: ['number', 'string', 'null'] }, unit: words, ...placeKeys })),
      assumed: listOf(text),
      missing: listOf(text),
    },
    { offenders: listOf(text) },
  ),
  finding: closed({
    rule: text,
    severity: oneOf('error', 'warning', 'note'),
    ...spot,
    message: text,
    mend: words,
    about: listOf(text),
    related: listOf(closed({ ...spot, message: text })),
  }),
  cost: closed({
    currency: { type: 'string', pattern: '^[A-Z]{3}$' },
    donors: named('sum'),
    parts: named('sum'),
    spend: named('sum'),
    returned: named('sum'),
    total: named('sum'),
    bySystem: { type: 'object', additionalProperties: named('sum') },
    bySession: { type: 'object', additionalProperties: named('sum') },
    onVehicle: named('sum'),
  }),
}
