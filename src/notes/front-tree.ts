import { type Document, isMap, isScalar, isSeq, type Pair, type YAMLMap } from 'yaml'
import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { countLost, joinLost } from './flow-comma.ts'
import type { Front, FrontEntry } from './front.ts'
import { toScalar } from './front-scalar.ts'
import type { Span } from './note-source.ts'
import { deepestLevel, tooDeep } from './trouble.ts'
import { isLeftOut, placeInFile, type YamlText } from './yaml-text.ts'

interface Tree {
  readonly yaml: YamlText
  readonly findings: Finding[]
}

/** Makes the tree of a YAML document that reads without fault; what is refused in it is left out and told. */
export function frontTree(doc: Document, yaml: YamlText): { front: Front | null; findings: readonly Finding[] } {
  const tree: Tree = { yaml, findings: [] }
  return { front: toFront(doc.contents, tree, 1), findings: tree.findings }
}

function toFront(node: unknown, tree: Tree, level: number): Front | null {
  if (isScalar(node)) return toScalar(node, tree.yaml)
  if (!isMap(node) && !isSeq(node)) return null
  const place = placeInFile(tree.yaml, withoutLineEnds(spanOf(node), tree.yaml.text))
  if (level > deepestLevel) {
    tree.findings.push(finding('front-matter', place, { message: tooDeep }))
    return null
  }
  if (isMap(node)) return { kind: 'map', place, entries: toEntries(node, tree, level) }
  return { kind: 'list', place, items: node.items.flatMap(child => toFront(child, tree, level + 1) ?? []) }
}

function toEntries(map: YAMLMap, tree: Tree, level: number): FrontEntry[] {
  const entries: FrontEntry[] = []
  const seen = new Map<string, Place>()
  for (let index = 0; index < map.items.length; index += 1) {
    const lost = countLost(map, index)
    const pair = map.items[index] as Pair
    const key = readKey(pair, seen, tree)
    const value = key && entryValue(pair, tree, level)
    if (key && value)
      entries.push({
        ...key,
        value: lost === 0 ? value : withLost(value, { from: pair, to: map.items[index + lost] as Pair }, tree),
      })
    index += lost
  }
  return entries
}

/** Null for a key that is refused, told by a finding. */
function readKey(
  { key, value }: Pair,
  seen: Map<string, Place>,
  { yaml, findings }: Tree,
): { key: string; keyPlace: Place } | null {
  const text = isScalar(key) ? String(key.value) : ''
  const keyPlace = placeInFile(yaml, spanOf(text === '' ? value : key))
  const refusal =
    text === '' ? 'Unexpected value without a key, expected a key, a colon and a space.' : refusedKeys.get(text)
  if (refusal !== undefined) findings.push(finding('front-matter', keyPlace, { message: refusal }))
  const first = seen.get(text)
  if (refusal === undefined && first) findings.push(repeated(text, keyPlace, first))
  if (refusal !== undefined || first) return null
  seen.set(text, keyPlace)
  return { key: text, keyPlace }
}

const refusedKeys = new Map([
  ...['__proto__', 'constructor', 'prototype'].map(
    key =>
      [
        key,
        `Unexpected key \`${key}\`, expected another name: this one is refused, for programs take it for their own.`,
      ] as const,
  ),
  ['<<', 'Unexpected `<<`, which merges mappings in some YAML, expected each key written out.'] as const,
])

function repeated(key: string, place: Place, first: Place): Finding {
  const message = `Unexpected second \`${key}\`, expected it once: the first one, on line ${first.line}, stands.`
  return finding('repeated-key', place, {
    message,
    related: [{ ...first, message: `\`${key}\` is first written here.` }],
  })
}

function entryValue({ key, value }: Pair, tree: Tree, level: number): Front | null {
  const span = spanOf(value ?? key)
  const isEmpty = span.start === span.end
  if (isEmpty && isLeftOut(tree.yaml, span.start)) return null
  if (value !== null) return toFront(value, tree, level + 1)
  return { kind: 'nothing', place: placeInFile(tree.yaml, { start: span.end, end: span.end }) }
}

function withLost(value: Front, { from, to }: { from: Pair; to: Pair }, { yaml, findings }: Tree): Front {
  if (value.kind !== 'scalar') return value
  const joined = joinLost(value, { start: spanOf(from.value).start, end: spanOf(to.key).end }, yaml)
  findings.push(joined.finding)
  return joined.value
}

/** Without what follows a node: its blanks and comments. */
function spanOf(node: unknown): Span {
  const range = isScalar(node) || isMap(node) || isSeq(node) ? node.range : null
  return { start: range?.[0] ?? 0, end: range?.[1] ?? 0 }
}

/** A mapping that is not in braces ends with its last word, not with the line end behind it. */
function withoutLineEnds({ start, end }: Span, text: string): Span {
  return { start, end: start + text.slice(start, end).trimEnd().length }
}
