import type { Rule } from './finding.ts'

interface RuleText {
  /** What is wrong, in one sentence. */
  readonly means: string
  /** A line that breaks the rule, and the same line mended. */
  readonly wrong: string
  readonly right: string
}

/** What each rule means and how a note is mended. Shown by `explain` and on the findings page. */
export const ruleTexts: Readonly<Record<Rule, RuleText>> = {
  'front-matter': {
    means:
      'The front matter is not a YAML mapping between two lines of three hyphens. The body of the note is still read.',
    wrong: '---\ntitle: Tank in\n(no closing line)',
    right: '---\ntitle: Tank in\n---',
  },
  'repeated-key': {
    means: 'A key stands twice in one mapping. The first value counts.',
    wrong: 'hours: 3\nhours: 4',
    right: 'hours: 4',
  },
  'flow-comma': {
    means: 'A mapping in braces was cut at a comma that belongs to the words.',
    wrong: '{ what: primer, grey, cost: £9 }',
    right: '{ what: "primer, grey", cost: £9 }',
  },
  'hash-comment': {
    means: 'YAML takes everything after a blank and # for a comment, so part of the value is lost.',
    wrong: 'number: T-60 #2',
    right: 'number: "T-60 #2"',
  },
  directive: {
    means:
      'A mark such as :private or ::: did not parse. What stands in its block is withheld from every edition but the full one.',
    wrong: ':private[the plate]',
    right: ':private[the plate]{as=identity}',
  },
  'pin-table': {
    means: 'A pin table stands outside a connector container, so nobody knows whose pins they are.',
    wrong: '| Pin | Wire |',
    right: ':::connector{#stalk-switch}\n| Pin | Wire |\n:::',
  },
  'repeated-note': {
    means: 'Two notes have one file name, so links and figures could lead to either.',
    wrong: 'sessions/2026/a.md and sessions/a.md',
    right: 'sessions/2026/a.md and sessions/b.md',
  },
  'unreadable-note': {
    means:
      'A note, or the text of one, is not read: it stands outside content/sessions, is a symbolic link, or is far too long or too deeply nested.',
    wrong: 'content/2026-03-07-tank.md',
    right: 'content/sessions/2026-03-07-tank.md',
  },
  'unknown-key': {
    means: 'The format has no key of this name here. It is kept, but nothing reads it.',
    wrong: 'huors: 3',
    right: 'hours: 3',
  },
  'unknown-action': {
    means: 'What was done to a part is one of eleven words.',
    wrong: 'action: instaled',
    right: 'action: fitted',
  },
  'unknown-kind': {
    means: 'The kind of a part is not one that has properties of its own. The part is recorded all the same.',
    wrong: 'kind: tnak',
    right: 'kind: tank',
  },
  'no-title': {
    means: 'Every note has a title.',
    wrong: 'date: 2026-03-07',
    right: 'title: Tank in for size\ndate: 2026-03-07',
  },
  'no-date': {
    means: 'A session note has a date, in its front matter or at the head of its file name.',
    wrong: 'title: Tank in',
    right: 'title: Tank in\ndate: 2026-03-07',
  },
  'bad-date': {
    means: 'A date is written year, month, day, and exists in the calendar (ISO 8601).',
    wrong: 'date: 2026-02-30',
    right: 'date: 2026-02-28',
  },
  'future-date': { means: 'The note is dated after today.', wrong: 'date: 2062-03-07', right: 'date: 2026-03-07' },
  'not-a-quantity': {
    means: 'This key holds a number with a unit, and nothing else.',
    wrong: 'length: fairly long',
    right: 'length: 4.8 m',
  },
  'unknown-value': { means: 'This key holds one of a few words.', wrong: 'state: alive', right: 'state: live' },
  'limit-without-why': {
    means: 'A limit of a check was changed and nobody said why.',
    wrong: 'voltage-drop/lighting: { max: 2 % }',
    right: 'voltage-drop/lighting: { max: 2 %, why: "my own target" }',
  },
  'no-alternative': {
    means: 'A picture has no words for a reader who cannot see it.',
    wrong: '![](../photos/tank.jpg)',
    right: '![The tank from behind](../photos/tank.jpg)',
  },
  'marked-place': {
    means:
      'A marked place leads to no point of a picture: no picture stands beside it, its number is none or is taken, or its place is not given in per cent of the picture. Its words stay.',
    wrong: 'The strap :mark[2]{at="140%,25%"} is too near',
    right: 'The strap :mark[2]{at="40%,25%"} is too near',
  },
  'unreadable-picture': {
    means:
      'A picture that a note names cannot be published: it is empty, damaged, too large, or of a kind that needs a reader of its own. Its alternative text stands in its place.',
    wrong: '![The tank](../photos/empty.jpg), a file of no bytes',
    right: '![The tank](../photos/tank.jpg), a file that a picture viewer opens',
  },
  'odd-picture': {
    means:
      'A picture is not what its name says, or holds more than pixels: a script, an address, a film. It is published as still pixels and nothing else of it.',
    wrong: 'tank.jpg, which is a PNG',
    right: 'tank.png',
  },
  'private-evidence': {
    means:
      'A picture that stands only inside private marks is named as evidence too. An edition that withholds the mark shows neither.',
    wrong: 'evidence: [ "photo:gate.jpg" ], where gate.jpg stands only inside :::private{as=place}',
    right: 'evidence: [ "photo:tank.jpg" ]',
  },
  dimension: {
    means: 'The value has another dimension than its property, or than the values before it.',
    wrong: 'fuel-tank: { length: 64 L }',
    right: 'fuel-tank: { filled-volume: 64 L }',
  },
  'ambiguous-unit': {
    means: 'The unit may mean two things, so nothing is read until the note or build.md says which.',
    wrong: '3 gal',
    right: '3 imp gal',
  },
  'ambiguous-colour': {
    means: 'A colour is given as a letter that may be two colours.',
    wrong: 'colour: b/w',
    right: 'colour: black/white',
  },
  'two-readings': {
    means: 'A number with a blank may be one figure or a count and a figure. The first reading is taken.',
    wrong: 'Cut 2 350 mm lengths',
    right: 'Cut two lengths of 350 mm',
  },
  'unit-missing': {
    means: 'A measurement is told without its unit.',
    wrong: 'The plate is seven and three eighths wide',
    right: 'The plate is seven and three eighths inches wide',
  },
  'decimal-mark': {
    means: 'The decimal mark is not the one that build.md names, so nothing is read.',
    wrong: '12,5 mm',
    right: '12.5 mm',
  },
  'unit-slip': {
    means: 'A new value differs from the old one by the factor of a slipped unit.',
    wrong: '86 mm, where 860 mm was measured before',
    right: '860 mm',
  },
  agreement: {
    means: 'The same property was measured again, and the two differ by more than both tolerances.',
    wrong: '852 mm ± 2 mm, where 860 mm ± 2 mm was measured before',
    right: 'length: { value: 852 mm ± 2 mm, supersedes: true }',
  },
  'unknown-target': {
    means: 'A name leads to nothing in the record.',
    wrong: '[the tank](part:feul-tank)',
    right: '[the tank](part:fuel-tank)',
  },
  'near-name': {
    means: 'A name that may be free is one letter away from one that is declared.',
    wrong: 'feul-tank: { length: 860 mm }',
    right: 'fuel-tank: { length: 860 mm }',
  },
  'rejected-without-why': {
    means: 'A part was rejected or returned, and nobody said why.',
    wrong: 'action: rejected',
    right: 'action: rejected\nwhy: 12 mm too short',
  },
  'no-rate': {
    means: 'Money was paid in a currency for which build.md gives no rate.',
    wrong: 'cost: €40',
    right: 'rates: { EUR: 0.86 }',
  },
  'no-closing': {
    means: 'The note closes a job or clears a fix that is not open.',
    wrong: 'closes: [ seal-hach ]',
    right: 'closes: [ seal-hatch ]',
  },
  unlikely: {
    means:
      'What the note says can hardly be so: a day of more than 24 hours, or a part sold before it was bought, returned twice, or fitted while it is rejected. It counts as written.',
    wrong: 'hours: 30',
    right: 'hours: 3.0',
  },
  'nothing-said': {
    means: 'A name stands with nothing behind it, so that nothing is known of the thing.',
    wrong: 'systems: { body: ~ }',
    right: 'systems: { body: Body }',
  },
  'withheld-name': {
    means: 'A word that an edition withholds stands unmarked where that edition would publish it.',
    wrong: 'Fetched it from the yard at Example Lane',
    right: 'Fetched it from :private[the yard at Example Lane]{as=place}',
  },
}
