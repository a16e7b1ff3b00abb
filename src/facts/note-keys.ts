import { closedWords } from './closed-words.ts'
import { closed, figure, words } from './field-makers.ts'
import type { Field, Fields } from './fields.ts'
import { must, source } from './referrals.ts'
import { circuitKeys, connectorKeys } from './wiring-keys.ts'

/** The keys of a volume. */
export const volumeKeys: Fields = { outside: { holds: 'shapes' }, wall: figure('length'), less: { holds: 'shapes' } }

const anything: Field = { holds: 'anything' }

/** The keys of a session note. Those that hold anything are read by a place of their own. */
export const sessionKeys: Fields = {
  title: words(),
  date: anything,
  by: words(),
  hours: anything,
  parts: { holds: 'named', each: anything },
  spend: {
    holds: 'rows',
    fields: {
      what: { holds: 'prose' },
      cost: { holds: 'amount' },
      system: words(must('system')),
      qty: anything,
      from: words(source),
    },
  },
  measurements: { holds: 'named', each: anything },
  circuits: { holds: 'named', each: { holds: 'group', fields: circuitKeys } },
  connectors: { holds: 'named', each: { holds: 'group', fields: connectorKeys } },
  volumes: { holds: 'named', each: { holds: 'group', fields: volumeKeys } },
  tests: {
    holds: 'rows',
    fields: { what: { holds: 'prose' }, result: closed(closedWords.result), note: { holds: 'prose' } },
  },
  temporary: {
    holds: 'rows',
    fields: {
      id: words(),
      what: { holds: 'prose' },
      part: words(must('part')),
      until: { holds: 'prose' },
      before: closed(closedWords.before),
    },
  },
  clears: { holds: 'list' },
  closes: { holds: 'list' },
}

/** The keys of inspection.yaml. */
export const inspectionKeys: Fields = {
  rule: words(),
  authority: words(),
  points: {
    holds: 'named',
    each: {
      holds: 'group',
      fields: { ask: { holds: 'prose' }, evidence: { holds: 'list' }, before: closed(closedWords.before) },
    },
  },
}
