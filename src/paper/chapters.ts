/** Pages that belong together, under one heading. */
export interface Chapter<Page> {
  /** Escaped. */
  readonly title: string
  /** The heading is the document's own; else the first page brings it. */
  readonly isHeaded: boolean
  readonly pages: readonly Page[]
}

/** The parts of the document in their order: the folders of the record, and a heading where no page of theirs leads the others. */
const order: readonly (readonly [readonly string[], string?])[] = [
  [[''], 'Overview'],
  [['build'], 'What the builder says'],
  [['sessions']],
  [['parts']],
  [['systems']],
  [['measurements']],
  [['wiring', 'circuits', 'connectors']],
  [['checks']],
  [['road', 'jobs', 'measure-next'], 'Open points'],
  [['inspection']],
  [['cost']],
  [['hours']],
  [['since']],
  [['photos']],
  [['findings']],
]

/** What only a screen or a printer of labels can use, and the same figures in another order. */
const leftOut = /^(search|files|labels|measurements\/[^/]+)\//

/** Sorts pages into chapters; a page of no known folder comes last rather than get lost. */
export function chaptersOf<Page extends { readonly path: string; readonly title: string }>(
  pages: readonly Page[],
): Chapter<Page>[] {
  const kept = pages.filter(({ path }) => !leftOut.test(path) && !isUnasked(path, pages))
  const known = new Set(order.flatMap(([folders]) => folders))
  const others = kept.filter(({ path }) => !known.has(folderOf(path)))
  const sorted = order.map(([folders, title]) => ({
    title,
    pages: folders.flatMap(folder => kept.filter(({ path }) => folderOf(path) === folder).sort(byAddress)),
  }))
  return [...sorted, { title: 'Further sheets', pages: others }].flatMap(({ title, pages: own }) => {
    const [first] = own
    return first === undefined ? [] : [{ title: title ?? first.title, isHeaded: title !== undefined, pages: own }]
  })
}

/** A check that found nothing here to ask: the page of checks names it, its own page would say nothing of the vehicle. */
function isUnasked(path: string, pages: readonly { readonly path: string }[]): boolean {
  const [, folder] = /^(checks\/[^/]+\/)index\.html$/.exec(path) ?? []
  return folder !== undefined && !pages.some(other => other.path !== path && other.path.startsWith(folder))
}

const folderOf = (path: string): string => path.split('/').slice(0, -1)[0] ?? ''

/** A folder's own page, then what lies in it. */
function byAddress(a: { readonly path: string }, b: { readonly path: string }): number {
  const [one, other] = [a, b].map(({ path }) => path.replace(/index\.html$/, ''))
  return (one ?? '') < (other ?? '') ? -1 : 1
}

/** How far below the heading of its chapter a page stands: the page that brings it 0, a part or a check 1, a working 2. */
export function depthOf(path: string, bringsHeading: boolean): 0 | 1 | 2 {
  if (bringsHeading) return 0
  return path.startsWith('checks/') && path.split('/').length > 3 ? 2 : 1
}
