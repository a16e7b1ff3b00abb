import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, extname, join, relative } from 'node:path'
import { decodeDraft } from '../drafts/decode-draft.ts'
import type { DraftGround } from '../drafts/draft-ground.ts'
import { draftKind } from '../drafts/draft-kind.ts'
import { DraftTrouble } from '../drafts/draft-trouble.ts'
import type { DraftHead } from '../drafts/table-note.ts'
import { nameOf } from './new-note.ts'
import { type BuildOptions, CannotRun, todayOf } from './options.ts'
import { readBuild } from './read-build.ts'

interface DraftOptions extends BuildOptions {
  readonly title: string | undefined
}

/** `oddleg draft FILE`: a purchase list or rough text becomes a session note; prints its path. Never writes over a file. */
export async function draft(file: string, options: DraftOptions): Promise<number> {
  const date = todayOf(options)
  const bytes = readGiven(file)
  const { record, settings } = await readBuild(options)
  const name = file === '-' ? 'standard input' : basename(file)
  const title = options.title?.trim() || titleOf(file, date)
  const text = await noteText(
    { bytes, kind: extname(file).toLowerCase() },
    { title, date, file: name },
    { record, options: settings },
  )
  const written = writeNote(join(options.build, 'content', 'sessions'), `${date}-${nameOf(title)}.md`, text)
  const shown = relative(process.cwd(), written)
  process.stdout.write(options.json ? `${JSON.stringify({ file: shown })}\n` : `${shown}\n`)
  return 0
}

function readGiven(file: string): Uint8Array {
  try {
    return readFileSync(file === '-' ? 0 : file)
  } catch (cause) {
    throw new CannotRun(`\`${file}\` could not be read: ${reasonOf(cause)}.`, { cause })
  }
}

interface Given {
  readonly bytes: Uint8Array
  /** Its ending, `.csv`; the first bytes go before it. */
  readonly kind: string
}

/** Each reader is loaded where it is needed. */
async function noteText({ bytes, kind }: Given, head: DraftHead, ground: DraftGround): Promise<string> {
  try {
    const is = draftKind(bytes, head.file, kind)
    if (is === 'workbook') {
      const [{ readXlsx }, { draftFromTable }] = await Promise.all([
        import('../drafts/read-xlsx.ts'),
        import('../drafts/table-note.ts'),
      ])
      return draftFromTable(await readXlsx(bytes, head.file), head, ground)
    }
    const { text, remark } = decodeDraft(bytes, head.file)
    return is === 'list'
      ? await noteOfList(text, { ...head, remark }, ground)
      : (await import('../drafts/text-note.ts')).draftFromText(text, { ...head, remark }, ground)
  } catch (cause) {
    if (cause instanceof DraftTrouble) throw new CannotRun(cause.message, { cause })
    throw cause
  }
}

async function noteOfList(text: string, head: DraftHead, ground: DraftGround): Promise<string> {
  const [{ readCsv }, { draftFromTable }] = await Promise.all([
    import('../drafts/read-csv.ts'),
    import('../drafts/table-note.ts'),
  ])
  return draftFromTable(readCsv(text, head.file), head, ground)
}

/** The file's own name as words; for standard input the day. */
function titleOf(file: string, date: string): string {
  const words = basename(file, extname(file)).replace(/[-_]+/g, ' ').trim()
  return file === '-' || words === '' ? `Draft of ${date}` : words
}

function writeNote(folder: string, name: string, text: string): string {
  const file = join(folder, name)
  try {
    mkdirSync(folder, { recursive: true })
    writeFileSync(file, text, { flag: 'wx' })
  } catch (cause) {
    const isThere = cause instanceof Error && 'code' in cause && cause.code === 'EEXIST'
    const why = isThere
      ? 'exists already: nothing was written. Give the note another title with --title'
      : `could not be written: ${reasonOf(cause)}`
    throw new CannotRun(`\`${file}\` ${why}.`, { cause })
  }
  return file
}

const reasonOf = (cause: unknown): string => (cause instanceof Error ? cause.message : String(cause))
