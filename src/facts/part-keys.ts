import { actions, closedWords } from './closed-words.ts'
import { closed, words } from './field-makers.ts'
import type { Fields } from './fields.ts'
import { must, near, photo, source } from './referrals.ts'

/** The words of a part that are kept as they are. */
export const partWords: Fields = {
  name: words(),
  kind: words(),
  system: words(must('system')),
  number: words(),
  serial: words(),
  receipt: words(photo),
  photos: { holds: 'list', refer: photo },
  standard: words(),
  terminal: words(),
  feeds: words(near('part')),
  feed: words(must('circuit')),
  material: words(),
  finish: words(),
  colour: { holds: 'colour' },
  contents: words(),
  function: words(),
}

/** What a note says of a part on that day. */
export const partDeeds: Fields = {
  action: closed(actions),
  fits: closed(closedWords.fits),
  from: words(source),
  cost: { holds: 'amount' },
  qty: { holds: 'anything' },
  replaces: words(must('part')),
  why: { holds: 'prose' },
}
