import { pageAddress, relativeHref } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { plain } from './inline.ts'
import { outwardLinks } from './outward-links.ts'
import { longDate } from './page-dates.ts'
import type { Sheet, Term } from './site-data.ts'

const styles = [
  'tokens',
  'sheet',
  'headings',
  'words',
  'rail',
  'marks',
  'tables',
  'leaders',
  'drawings',
  'pictures',
  'results',
  'wires',
  'tank',
  'ledger',
  'narrow',
  'paper',
  'one-page',
  'labels',
  'wiring',
  'wiring-paper', // a named page counts only after the page of `paper`
]

/** The sheets of a record, in the order of the bar; those without `main` stand at the foot only. */
const sheets: readonly { readonly text: string; readonly folder: string | null; readonly main: boolean }[] = [
  { text: 'Overview', folder: null, main: true },
  { text: 'Sessions', folder: 'sessions', main: true },
  { text: 'Parts', folder: 'parts', main: true },
  { text: 'Measurements', folder: 'measurements', main: true },
  { text: 'Wiring', folder: 'wiring', main: true },
  { text: 'Checks', folder: 'checks', main: true },
  { text: 'Jobs', folder: 'jobs', main: true },
  { text: 'Inspection', folder: 'inspection', main: true },
  { text: 'Cost', folder: 'cost', main: true },
  { text: 'Search', folder: 'search', main: true },
  { text: 'Before the road', folder: 'road', main: false },
  { text: 'Hours', folder: 'hours', main: false },
  { text: 'Changes', folder: 'since', main: false },
  { text: 'Systems', folder: 'systems', main: false },
  { text: 'Measure next', folder: 'measure-next', main: false },
  { text: 'Photographs', folder: 'photos', main: false },
  { text: 'Labels', folder: 'labels', main: false },
  { text: 'Files', folder: 'files', main: false },
  { text: 'Build note', folder: 'build', main: false },
  { text: 'Findings', folder: 'findings', main: false },
]

interface SheetTitle {
  readonly address: string
  readonly title: string
  /** The sheet that it belongs to: `wiring` for a circuit's page. */
  readonly section: string | null
}

/** What is around a page: policy, styles, ways to the other sheets, title block. */
export function makeSheet(atlas: Atlas, { address, title, section }: SheetTitle): Sheet {
  const to = (goal: string): string => relativeHref(address, goal)
  const build = atlas.record.build.title.text
  const shown = sheets.filter(({ folder }) => folder === null || hasSheet(atlas, folder))
  return {
    address,
    title: section === null ? `${title}, as built` : `${title} · ${build}`,
    build,
    home: to('index.html'),
    styles: styles.map(name => to(`styles/${name}.css`)),
    scripts: [
      'client/filter-table.js',
      ...(atlas.extras.serve ? ['client/reload.js'] : []),
      ...atlas.extras.scripts,
    ].map(to),
    policy: policyOf(atlas.extras.serve),
    ...outwardLinks(atlas, address),
    sheets: shown.map(({ text, folder, main }) => {
      const goal = folder === null ? 'index.html' : pageAddress(folder)
      return {
        text,
        href: to(goal),
        main,
        current: goal === address ? 'page' : folder === section && folder !== null ? 'true' : null,
      }
    }),
    block: titleBlock(atlas, title),
    warning: warningOf(atlas, to),
  }
}

/** Sheets that would be empty, or that the edition withholds, are not there. */
export function hasSheet({ record, withheld, extras }: Atlas, folder: string): boolean {
  switch (folder) {
    case 'cost':
      return !withheld.has('cost')
    case 'since':
      return (extras.before ?? null) !== null
    case 'files':
      return (extras.tables ?? []).length > 0
    case 'photos':
      return extras.photos.length > 0
    case 'findings':
      return extras.findings.length > 0
    case 'inspection':
      return extras.inspection.length > 0
    case 'systems':
      return record.systems.length > 0
    case 'labels':
      return record.parts.length + record.circuits.length + record.connectors.length > 0
    case 'wiring':
      return record.circuits.length + record.connectors.length + record.fuseBoxes.length > 0
    default:
      return true
  }
}

function policyOf(serve: boolean): string {
  const sources = [
    "default-src 'none'",
    "img-src 'self'",
    "style-src 'self'",
    "script-src 'self'",
    ...(serve ? ["connect-src 'self'"] : []),
  ]
  return [...sources, "base-uri 'none'", "form-action 'none'"].join('; ')
}

function titleBlock({ record, extras }: Atlas, title: string): Term[] {
  const last = record.sessions.at(-1)
  return [
    { term: 'Record', words: [plain(`${record.build.title.text}, as built`)] },
    { term: 'Sheet', words: [plain(title)] },
    {
      term: 'Up to session',
      words: [
        plain(last === undefined ? 'none yet' : `${last.number}${last.date === '' ? '' : `, ${longDate(last.date)}`}`),
      ],
    },
    { term: 'Edition', words: [plain(record.edition)] },
    ...(extras.sum === undefined ? [] : [{ term: 'Record sum', words: [plain(shortSum(extras.sum))] }]),
    ...(extras.date === null ? [] : [{ term: 'Published', words: [plain(longDate(extras.date))] }]),
  ]
}

/** The first sixteen digits in fours, as one compares them by eye; the overview has all. */
const shortSum = (sum: string): string => `${sum.slice(0, 16).replace(/(.{4})(?=.)/g, '$1 ')} …`

function warningOf({ extras }: Atlas, to: (goal: string) => string): Sheet['warning'] {
  const errors = extras.findings.filter(({ severity }) => severity === 'error').length
  if (errors === 0) return []
  const count = errors === 1 ? 'one mistake' : `${errors} mistakes`
  return [
    plain(`Published in spite of ${count} in the notes: figures may be missing or wrong. `),
    plain('The list', to(pageAddress('findings'))),
  ]
}
