import { type Folder, textOf } from './folder.ts'

const own = ['bound', 'bound-workings']

/** The styles of the pages in their order, made to fit the document: headings by the class of the rank that they had, then its own. */
export function boundStyles(folder: Folder, chapters: readonly string[]): string {
  const sheets = [...folder.files].flatMap(({ path, content }) =>
    path.endsWith('index.html') && typeof content === 'string' ? [linkedStyles(content)] : [],
  )
  const names = [...new Set(sheets.flat()), ...own]
  const texts = names.map(name => byClass(textOf(folder, `styles/${name}.css`) ?? ''))
  return `${texts.join('\n')}\n${headlines(folder, chapters)}`
}

const linkedStyles = (page: string): string[] =>
  [
    ...page.slice(0, page.indexOf('</head>')).matchAll(/<link rel="stylesheet" href="[^"]*\/?styles\/([\w-]+)\.css"/g),
  ].map(([, name = '']) => name)

/** Selectors of h1 to h6 become those of the classes that bound headings have. */
const byClass = (css: string): string => css.replace(/(?<![-\w.#])h([1-6])(?![-\w])/g, '.h$1')

/** At the head of each page its chapter, and the build with its edition. */
function headlines({ title, edition }: Folder, chapters: readonly string[]): string {
  const named = (name: string, words: string): string => `@page ${name} { @top-left { content: ${quoted(words)} } }`
  const wiring = chapters.includes('Wiring') ? ['wide', 'bench'].map(name => named(name, 'Wiring')) : []
  return [
    `@page { @top-right { content: ${quoted(`${title}, as built · edition ${edition}`)} } }`,
    ...chapters.map((words, at) => `${named(`chapter-${at}`, words)} .chapter-${at} { page: chapter-${at} }`),
    ...wiring,
    '@page cover { @top-right { content: none } @bottom-right { content: none } }',
  ].join('\n')
}

/** Words as a string of CSS, whatever they hold. */
function quoted(words: string): string {
  const escaped = words.replace(/[^\p{L}\p{N} ,.·-]/gu, found => `\\${found.codePointAt(0)?.toString(16)} `)
  return `"${escaped}"`
}
