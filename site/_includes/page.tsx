import type { RailNote } from '../../src/pages/blocks.ts'
import type { PageRow } from '../../src/pages/page-row.ts'
import type { Page, Sheet } from '../../src/pages/site-data.ts'
import { none, raw } from './jsx/jsx-runtime.ts'
import { Part } from './parts-of-page.tsx'
import { Shapes } from './shapes.tsx'
import { VerdictMark, Words } from './words.tsx'

/** A whole page: bar, sheet, title block. */
export const PrintedPage = ({ page, language }: { readonly page: Page; readonly language: string }) => (
  <>
    {raw('<!doctype html>\n')}
    <html lang={language}>
      <Head sheet={page.sheet} />
      <body class={page.look === 'plain' ? null : page.look}>
        <a class="skip" href="#main">
          Skip to the record
        </a>
        <Shapes />
        <Bar sheet={page.sheet} />
        <main class="sheet" id="main" tabindex="-1">
          {page.sheet.warning.length === 0 ? null : (
            <p class="warning">
              <Words words={page.sheet.warning} />
            </p>
          )}
          <Title page={page} />
          {page.rows.map(row => (
            <Row row={row} />
          ))}
          <Around page={page} />
        </main>
        <TitleBlock sheet={page.sheet} />
      </body>
    </html>
  </>
)

const Head = ({ sheet }: { readonly sheet: Sheet }) => (
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta http-equiv="Content-Security-Policy" content={sheet.policy} />
    <meta name="referrer" content="no-referrer" />
    <title>{sheet.title}</title>
    {sheet.canonical === undefined ? null : <link rel="canonical" href={sheet.canonical} />}
    {sheet.feed === undefined ? null : (
      <link rel="alternate" type="application/atom+xml" href={sheet.feed.href} title={sheet.feed.title} />
    )}
    {sheet.styles.map(href => (
      <link rel="stylesheet" href={href} />
    ))}
    {sheet.scripts.map(src => (
      <script src={src} defer />
    ))}
  </head>
)

const Bar = ({ sheet }: { readonly sheet: Sheet }) => (
  <header class="bar">
    <a class="name" href={sheet.home}>
      {sheet.build}
    </a>
    <nav aria-label="Sheets">
      <ul>
        {sheet.sheets
          .filter(link => link.main)
          .map(link => (
            <li>
              <a href={link.href} aria-current={link.current}>
                {link.text}
              </a>
            </li>
          ))}
      </ul>
    </nav>
    <a class="to-sheets" href="#sheets">
      All sheets
    </a>
  </header>
)

const Title = ({ page }: { readonly page: Page }) => (
  <div class="row first">
    {page.gutter.length === 0 ? null : (
      <div class="gut">
        <dl>
          {page.gutter.map(({ term, words }) => (
            <div>
              <dt>{term}</dt>
              <dd>
                <Words words={words} />
              </dd>
            </div>
          ))}
        </dl>
      </div>
    )}
    <div class={page.wide ? 'across' : 'txt'}>
      <h1>{page.title}</h1>
    </div>
  </div>
)

const Row = ({ row }: { readonly row: PageRow }) => {
  const used = row.rail.filter(note => note.figure > 0).length
  const look = `${row.wide ? 'across' : 'txt'}${used > 0 && !row.wide ? ' runs' : ''}${used > 2 ? ' many' : ''}`
  return (
    <div class="row">
      <div class={look}>
        {row.parts.map(part => (
          <Part part={part} />
        ))}
      </div>
      {row.rail.length === 0 ? null : (
        <div class={row.wide ? 'mar under' : 'mar'}>
          <Rail notes={row.rail} />
        </div>
      )}
    </div>
  )
}

/** The style sheet joins the first twelve figures of a block to their notes. */
const isLed = ({ figure }: RailNote): boolean => figure > 0 && figure <= 12
const lookOf = (note: RailNote): string | null =>
  isLed(note) ? `led r${note.figure}` : note.figure === 0 ? 'free' : null

const Rail = ({ notes }: { readonly notes: readonly RailNote[] }) => (
  <ul class="rail" aria-label="What used these figures">
    {notes.map(note => (
      <li class={lookOf(note)}>
        {note.of.length === 0 ? null : (
          <span class="of">
            <Words words={note.of} />
          </span>
        )}
        <span class="does">
          <Words words={note.words} />
        </span>
        {note.marks.map(mark => (
          <VerdictMark mark={mark} />
        ))}
        {isLed(note) ? (
          <>
            <i class="jog down" />
            <i class="jog up" />
          </>
        ) : null}
      </li>
    ))}
  </ul>
)

const Around = ({ page: { before, after } }: { readonly page: Page }) =>
  before === null && after === null ? (
    none
  ) : (
    <div class="row">
      <nav class="txt pair" aria-label="Before and after">
        {before === null ? (
          <span />
        ) : (
          <a rel="prev" href={before.href}>
            {before.text}
          </a>
        )}
        {after === null ? (
          <span />
        ) : (
          <a rel="next" href={after.href}>
            {after.text}
          </a>
        )}
      </nav>
    </div>
  )

const TitleBlock = ({ sheet }: { readonly sheet: Sheet }) => (
  <footer class="block">
    <div class="in">
      <dl>
        {sheet.block.map(({ term, words }) => (
          <div>
            <dt>{term}</dt>
            <dd>
              <Words words={words} />
            </dd>
          </div>
        ))}
      </dl>
      <nav id="sheets" aria-label="All sheets">
        <ul>
          {sheet.sheets.map(link => (
            <li>
              <a href={link.href} aria-current={link.current}>
                {link.text}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <p class="disclaim">
        Set out by oddleg from the builder’s notes. It informs and approves nothing; local codes and licensed practice
        decide.
      </p>
    </div>
  </footer>
)
