import { closedWords, wordOf } from './closed-words.ts'
import { closed, figure, words } from './field-makers.ts'
import type { Fields } from './fields.ts'
import { isIdentifier } from './identifier.ts'
import { must, near } from './referrals.ts'

const cable = {
  area: figure('area'),
  colour: { holds: 'colour' },
  insulation: figure('temperature'),
  rating: figure('current'),
} as const satisfies Fields

const fuse: Fields = {
  box: words(must('fuse-box')),
  way: words(),
  rating: figure('current'),
  type: words(),
  after: figure('length'),
  'let-through': figure('let-through'),
  breaking: figure('current'),
  clears: figure('current'),
}

/** What is crimped on each end: where the wire begins, where it ends, and where its return does. */
const terminals: Fields = { from: words(), to: words(), earth: words() }

/** The keys of a circuit. */
export const circuitKeys: Fields = {
  name: words(),
  feeds: words(near('part')),
  system: words(must('system')),
  use: closed(closedWords.use),
  load: figure('current', 'power'),
  duty: closed(closedWords.duty),
  fuse: { holds: 'group', fields: fuse, short: 'rating' },
  supply: words(text =>
    wordOf(text, closedWords.supply) === null && isIdentifier(text)
      ? { to: 'circuit', strictness: 'must-exist' }
      : null,
  ),
  through: { holds: 'list', refer: near('part') },
  cable: { holds: 'cable', fields: cable },
  length: figure('length'),
  return: { holds: 'return', fields: { ...cable, length: figure('length'), loom: words(near('loom')) } },
  earth: words(near('earth-point')),
  joints: figure('resistance'),
  zone: words(must('zone')),
  loom: words(near('loom')),
  route: { holds: 'list' },
  terminals: { holds: 'group', fields: terminals },
  state: closed(closedWords.state),
}

const pinKeys: Fields = {
  wire: { holds: 'cable', fields: { area: cable.area, colour: cable.colour }, colourAlone: true },
  to: words(),
  carries: words(),
  circuit: words(must('circuit')),
  meets: words(),
  terminal: words(),
}

/** The keys of a connector. */
export const connectorKeys: Fields = {
  name: words(),
  mates: words(must('connector')),
  rating: figure('current'),
  terminal: words(),
  pins: { holds: 'named', each: { holds: 'group', fields: pinKeys, short: 'wire' } },
}
