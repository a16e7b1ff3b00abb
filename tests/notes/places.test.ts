import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Front, type FrontScalar, placeWithin } from '../../src/notes/front.ts'
import { noteOf, sessionFile, sliceAt } from './note-of.ts'

/** A value as a builder may write it, and the text that it stands for (YAML 1.2.2, chapters 7 and 8). */
interface Written {
  readonly yaml: string
  readonly text: string
}

const word = fc
  .string({ unit: fc.constantFrom(...'abcXYZ019°±×²µΩé😀½"\'.-/'), minLength: 1, maxLength: 6 })
  .map(each => `w${each}e`)
const words = fc.array(word, { minLength: 1, maxLength: 4 })
const lines = fc.array(words, { minLength: 1, maxLength: 4 }).map(all => all.map(each => each.join(' ')))
const indent = '    '

const plainLine: fc.Arbitrary<Written> = words.map(each => ({ yaml: each.join(' '), text: each.join(' ') }))
const plainLines: fc.Arbitrary<Written> = lines.map(each => ({
  yaml: each.join(`  \n${indent}`),
  text: each.join(' '),
}))
const plainParagraphs: fc.Arbitrary<Written> = lines.map(each => ({
  yaml: each.join(`\n\n \n${indent}`),
  text: each.join('\n\n'),
}))
const single: fc.Arbitrary<Written> = lines.map(each => ({
  yaml: `'${each.join(`\n${indent}`).replaceAll("'", "''")}'`,
  text: each.join(' '),
}))
const double: fc.Arbitrary<Written> = fc
  .tuple(lines, fc.constantFrom('°', 'é', '😀', ' ', '\n', '"', '\\', '\u00a0'))
  .map(([each, special]) => ({
    yaml: `"${each.map(line => line.replace(/["\\]/g, '\\$&')).join(`\n${indent}`)} ${escaped(special)}w\\\n${indent}x${escaped(special)}"`,
    text: `${each.join(' ')} ${special}wx${special}`,
  }))
const literal: fc.Arbitrary<Written> = lines.map(each => ({
  yaml: `|\n${each.map((line, at) => indent + ' '.repeat(at) + line).join('\n')}`,
  text: `${each.map((line, at) => ' '.repeat(at) + line).join('\n')}\n`,
}))
const folded: fc.Arbitrary<Written> = lines.map(each => ({
  yaml: `>-\n${each.map(line => indent + line).join('\n')}`,
  text: each.join(' '),
}))
const indented: fc.Arbitrary<Written> = lines.map(each => ({
  yaml: `|2-\n${each.map(line => `      ${line}`).join('\n')}`,
  text: each.map(line => `  ${line}`).join('\n'),
}))

const styles: Record<string, fc.Arbitrary<Written>> = {
  plainLine,
  plainLines,
  plainParagraphs,
  single,
  double,
  literal,
  folded,
  indented,
}

function escaped(text: string): string {
  const code = text.codePointAt(0) ?? 0
  if (text === '"' || text === '\\') return `\\${text}`
  return code > 0xffff ? `\\U${code.toString(16).padStart(8, '0')}` : `\\u${code.toString(16).padStart(4, '0')}`
}

const fileStyle = fc.record({ bom: fc.constantFrom('', '\uFEFF'), ending: fc.constantFrom('\n', '\r\n') })

/** A note that holds the values below `a`, with a key behind each. */
function fileOf(values: readonly Written[], { bom, ending }: { bom: string; ending: string }): string {
  const yaml = values.map(({ yaml: each }, at) => `  k${at}: ${each}\n  after${at}: 1`).join('\n')
  return bom + `---\ntitle: x\na:\n${yaml}\n---\nBody\n`.replaceAll('\n', ending)
}

function scalarsOf(front: Front | null): FrontScalar[] {
  if (front?.kind === 'scalar') return [front]
  if (front?.kind === 'map')
    return front.entries.filter(({ key }) => !/^after|^title/.test(key)).flatMap(({ value }) => scalarsOf(value))
  return []
}

describe.each(Object.entries(styles))('places within a value written %s', (name, style) => {
  test('its text is what YAML says, and each of its words stands where its place says', () => {
    fc.assert(
      fc.property(fc.array(style, { minLength: 1, maxLength: 3 }), fileStyle, (values, how) => {
        const file = fileOf(values, how)
        const note = noteOf(file)
        expect(note.findings).toEqual([])
        const scalars = scalarsOf(note.front)
        expect(scalars.map(({ text }) => text)).toEqual(values.map(({ text }) => text))
        for (const scalar of scalars) expect(misplaced(scalar, file, name)).toEqual([])
      }),
      { numRuns: 150 },
    )
  })
})

/** Words whose place does not hold them; escapes in the place are undone first. */
function misplaced({ text, pieces }: FrontScalar, file: string, style: string): string[] {
  return [...text.matchAll(/[^ \n]+/g)].flatMap(({ 0: found, index }) => {
    const place = placeWithin(pieces, sessionFile, { start: index, end: index + found.length })
    const there = undone(sliceAt(file, place), style)
    return there === found ? [] : [`${found} is said to stand at ${there}`]
  })
}

function undone(written: string, style: string): string {
  if (style === 'single') return written.replaceAll("''", "'")
  if (style !== 'double') return written
  return written
    .replace(/\\\r?\n */g, '')
    .replace(/\\(?:u(.{4})|U(.{8}))/g, (_, short?: string, long?: string) =>
      String.fromCodePoint(Number.parseInt(short ?? long ?? '', 16)),
    )
    .replace(/\\(["\\])/g, '$1')
}

describe('places of keys and values', () => {
  const text =
    '---\ntitle: "Tank, in"\nparts:\n  tank: { name: \'Tank 😀\', mass: 11.5 kg }\n  # a comment\nwhy: |\n  one\n  two\n\nlast: x # done\n---\n'
  const shown = (front: Front | null): string[] => {
    if (front?.kind === 'list') return front.items.flatMap(shown)
    if (front?.kind !== 'map') return []
    return front.entries.flatMap(({ keyPlace, value }) => [
      `${sliceAt(text, keyPlace)} = ${sliceAt(text, value.place)}`,
      ...shown(value),
    ])
  }

  test('a key, a value with its quotes, a mapping in braces and a block each stand where they say', () => {
    expect(shown(noteOf(text).front)).toEqual([
      'title = "Tank, in"',
      "parts = tank: { name: 'Tank 😀', mass: 11.5 kg }",
      "tank = { name: 'Tank 😀', mass: 11.5 kg }",
      "name = 'Tank 😀'",
      'mass = 11.5 kg',
      'why = |\n  one\n  two',
      'last = x',
    ])
  })

  test('a place that ends with an escape ends behind it', () => {
    const [{ pieces } = { pieces: [] }] = scalarsOf(noteOf('---\na: "2.5 mm\\u00b2 red"\n---').front)
    expect(placeWithin(pieces, sessionFile, { start: 0, end: 7 })).toMatchObject({ column: 5, endColumn: 17 })
    expect(placeWithin(pieces, sessionFile, { start: 8, end: 11 })).toMatchObject({ column: 18, endColumn: 21 })
  })
})
