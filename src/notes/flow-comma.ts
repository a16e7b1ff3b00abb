import { isScalar, type YAMLMap } from 'yaml'
import { type Finding, finding } from '../findings/finding.ts'
import type { FrontScalar } from './front.ts'
import type { Span } from './note-source.ts'
import { quoteYaml } from './quote-yaml.ts'
import { scalarPieces } from './scalar-pieces.ts'
import { shown } from './trouble.ts'
import { placeInFile, type YamlText } from './yaml-text.ts'

/** `{ what: primer, grey, cost: £31 }`: how many entries behind this one are words that its value lost at a comma. */
export function countLost(map: YAMLMap, index: number): number {
  const value = map.items[index]?.value
  if (!map.flow || !isScalar(value) || value.value === '') return 0
  const behind = map.items.slice(index + 1)
  const next = behind.findIndex(({ key, value }) => value !== null || !isScalar(key))
  return next === -1 ? behind.length : next
}

/** The value read on to the end of what it lost, as its mend in quotes would read; `whole` spans both. */
export function joinLost(value: FrontScalar, whole: Span, yaml: YamlText): { value: FrontScalar; finding: Finding } {
  const written = yaml.text.slice(whole.start, whole.end)
  const text = unfolded(value.quoted ? written.replace(/^(["'])(.*?)\1/s, '$2') : written)
  const message = `Unexpected comma in \`${shown(text)}\`, expected quotes: in braces the comma ends the value at \`${shown(value.text)}\`.`
  const told = finding('flow-comma', value.place, { message, mend: quoteYaml(text) })
  if (value.quoted) return { value, finding: told }
  const pieces = scalarPieces(yaml.source, { style: 'block', written, at: yaml.base + whole.start, text })
  return { value: { ...value, place: placeInFile(yaml, whole), text, pieces }, finding: told }
}

function unfolded(written: string): string {
  return written.replace(/[ \t]*\r?\n[ \t\r\n]*/g, ' ')
}
