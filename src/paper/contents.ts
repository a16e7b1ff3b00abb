/** A line of the contents. */
export interface Entry {
  /** Escaped. */
  readonly title: string
  readonly anchor: string
  readonly depth: 0 | 1
}

/** The contents; where a number is not known yet its place is kept, so that nothing moves when it is filled in. */
export function contentsPage(entries: readonly Entry[], numbers: ReadonlyMap<string, number>): string {
  const lines = entries.map(({ title, anchor, depth }) => {
    const number = numbers.get(anchor)
    return `<li class="deep-${depth}"><a href="#${anchor}"><span class="of">${title}</span><span class="dots"></span><span class="no">${number ?? '000'}</span></a></li>\n`
  })
  return `<section class="contents"><h1 class="h1">Contents</h1><ol>\n${lines.join('')}</ol></section>\n`
}
