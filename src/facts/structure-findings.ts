import type { z } from 'zod'
import type { Front } from '../notes/front.ts'
import { nearest } from './near-words.ts'
import { entryAt, toPlain } from './plain-front.ts'
import { oneOf, quoted, quotedFront } from './quoted.ts'
import { placeOfText } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'

type Issue = z.core.$ZodIssue

interface Structure {
  readonly front: Front
  readonly schema: z.ZodType
  /** The keys that lead to it, for the sentences. */
  readonly under?: readonly string[]
}

/** Holds front matter against its schema: keys and closed words that are not known, a list where a mapping belongs. */
export function reportStructure(sheet: Sheet, { front, schema, under = [] }: Structure): void {
  const { error } = schema.safeParse(toPlain(front))
  for (const issue of error?.issues ?? []) reportIssue(sheet, { front, under }, issue)
}

interface Ground {
  readonly front: Front
  readonly under: readonly string[]
}

function reportIssue(sheet: Sheet, ground: Ground, issue: Issue): void {
  if (issue.code === 'invalid_union') {
    for (const inner of likeliest(issue.errors))
      reportIssue(sheet, ground, { ...inner, path: [...issue.path, ...inner.path] })
  } else if (issue.code === 'unrecognized_keys') {
    for (const key of issue.keys)
      reportKey(sheet, ground, { path: [...issue.path, key], known: issue.message.split(' ') })
  } else reportValue(sheet, ground, issue)
}

/** Of several forms, the one whose outside fits; else the first. */
function likeliest(branches: readonly (readonly Issue[])[]): readonly Issue[] {
  return (
    branches.find(issues => issues.every(({ path, code }) => path.length > 0 || code === 'unrecognized_keys')) ??
    branches.at(-1) ??
    []
  )
}

interface UnknownKey {
  readonly path: readonly PropertyKey[]
  readonly known: readonly string[]
  /** What is expected where no known key is near; else they are listed. */
  readonly otherwise?: string
}

/** Says that a key is not known, with the nearest that is. */
export function reportKey(
  sheet: Sheet,
  { front, under }: Ground,
  { path, known, otherwise = oneOf(known) }: UnknownKey,
): void {
  const key = String(path.at(-1))
  const near = nearest(key, known)
  const whole = [...under, ...path.slice(0, -1)]
  const where = whole.length > 0 ? ` in \`${printKeys(whole)}\`` : ''
  const message = `Unexpected key ${quoted(key)}${where}, expected ${near === null ? otherwise : `\`${near}\``}`
  report(sheet, 'unknown-key', { place: entryAt(front, path).keyPlace, message, mend: near })
}

/** A word that is in no list, or a list where a mapping belongs. */
function reportValue(sheet: Sheet, { front, under }: Ground, issue: Issue): void {
  const { value } = entryAt(front, issue.path)
  const isWord = issue.code === 'invalid_value'
  const known = isWord ? issue.message.split(' ') : []
  const message = `Unexpected ${quotedFront(value)} for \`${printKeys([...under, ...issue.path])}\`, expected ${isWord ? oneOf(known) : issue.message}`
  const rule = !isWord ? 'front-matter' : issue.path.at(-1) === 'action' ? 'unknown-action' : 'unknown-value'
  report(sheet, rule, {
    place: placeOfText(value),
    message,
    mend: value.kind === 'scalar' ? nearest(value.text, known) : null,
  })
}

const sections: Readonly<Record<string, string>> = {
  parts: '',
  circuits: 'circuit:',
  connectors: 'connector:',
  volumes: 'volume:',
}

/** Keys as a path: `circuit:fuel-pump/use`, `tests/2/result`. */
function printKeys(keys: readonly PropertyKey[]): string {
  const [section = '', thing, ...rest] = keys.map(key => (typeof key === 'number' ? String(key + 1) : String(key)))
  const kind = Object.hasOwn(sections, section) ? sections[section] : undefined
  if (thing === undefined) return section
  return [kind === undefined ? `${section}/${thing}` : `${kind}${thing}`, ...rest].join('/')
}
