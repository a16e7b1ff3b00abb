import { latest, quantityAt } from '../../record/lookups.ts'
import type { Found, Input } from '../input.ts'
import { statedLeaf } from '../leaf.ts'
import { targetOf } from '../look-up.ts'
import { writtenLimit } from '../override.ts'
import type { Scope } from '../scope.ts'
import { digitsOf } from '../show-figure.ts'
import { type LampSize, lampRows, narrowSpacing, narrowWidth, otherRows, type Pointer } from '../tables/lamp-rules.ts'
import { functionsIn, functionsOf } from './lamp-function.ts'

/** A size has one end in the rule: tops and edge distances are at most, bottoms and spacings at least. */
const isMost: Readonly<Record<LampSize, boolean>> = {
  'height-top': true,
  'height-bottom': false,
  spacing: false,
  'edge-distance': true,
}
const source = 'UN R48, 6.19.4, as printed in the Official Journal L 323 of 6.12.2011'

/** The name of the row by which a size is judged, such as `stop-lamp-height-top`: build.md may set a limit by it. */
export function lampRow(size: LampSize): Input<string> {
  return {
    symbol: null,
    meaning: `row of the rule for its ${size.replace('-', ' ')}`,
    dimension: null,
    reads: ['lamp/function'],
    read: scope => ({ type: 'words', words: rowOf(scope, size) }),
  }
}

/** The strictest end that the rule's rows give for the lamp's functions; missing, with the row named, where a row was not seen. */
export function lampEnd(size: LampSize, symbol: string): Input<number> {
  return {
    symbol,
    meaning: `what the rule gives for its ${size.replace('-', ' ')}`,
    dimension: 'length',
    reads: ['lamp/function', 'vehicle/width'],
    tables: [source],
    isOptional: true,
    read: scope => readEnd(scope, size, symbol),
  }
}

function readEnd(scope: Scope, size: LampSize, symbol: string): Found | null {
  const names = namesOf(scope)
  if (names === null) return null
  const set = writtenLimit({ check: 'lamp-position', scope, words: rowOf(scope, size) }, () => true)
  if (set !== null) return { type: 'none' }
  const rows = names.map(name => [name, endOf(name, size, scope)] as const)
  for (const [name, end] of rows)
    if (end === null)
      scope.notebook.need(
        `limit/${name}`,
        `UN R48, ${name.replaceAll('-', ' ')}, ${size.replace('-', ' ')}: that row was not seen; look it up and set \`lamp-position/${name}-${size}\` in build.md${besideIt(name, size)}`,
      )
  const ends = rows.flatMap(([, end]) => (end === null ? [] : [end]))
  if (ends.length < rows.length) return null
  const value = isMost[size] ? Math.min(...ends) : Math.max(...ends)
  scope.notebook.look({
    table: 'Lamp position',
    row: `${names.join(', ')}, ${size.replace('-', ' ')}: ${value} mm`,
    source,
  })
  return {
    type: 'figure',
    term: statedLeaf('limit', { symbol, meaning: `${size.replace('-', ' ')} by the rule`, value, unit: 'mm' }),
  }
}

/** What other rules give for the same size, as a pointer and no limit. */
function besideIt(name: string, size: LampSize): string {
  const rows = Object.hasOwn(otherRows, name) ? (otherRows[name] ?? []) : []
  return rows.flatMap(row => besideBy(row, size)).join('')
}

function besideBy(row: Pointer, size: LampSize): string[] {
  const end = row[size]
  if (end === undefined) return []
  const tall =
    row.impracticable === undefined || size !== 'height-top' ? '' : `, ${row.impracticable} mm where no less can be`
  return [
    `; another rule, the ${row.source}, has ${isMost[size] ? 'at most' : 'at least'} ${digitsOf(end, 5)} mm${tall}`,
  ]
}

function namesOf({ subject, notebook }: Scope): string[] | null {
  const target = subject.thing === null ? null : targetOf(subject.thing, 'function')
  const held = target?.held ?? null
  if (held?.value.type !== 'words') {
    notebook.need(target?.path ?? subject.id, 'what it is for is not written')
    return null
  }
  const words = held.value.words.text.trim()
  const { place, session, figure } = held
  notebook.use({ path: target?.path ?? subject.id, words, place, session, figure })
  return functionsIn(words)
}

function endOf(name: string, size: LampSize, scope: Scope): number | null {
  const row = Object.hasOwn(lampRows, name) ? lampRows[name] : undefined
  const end = row?.[size] ?? null
  if (end === null || size !== 'spacing') return end
  return widthOf(scope) < narrowWidth ? narrowSpacing : end
}

/** The width of the vehicle in mm; where it is not written it is taken as no narrow one. */
function widthOf({ record, notebook }: Scope): number {
  const bodies = record.parts.filter(({ partKind, onVehicle }) => partKind === 'body' && onVehicle)
  const thing = [record.vehicle, ...bodies].find(one => latest(one, 'width') !== null)
  const width = thing === undefined ? null : quantityAt(thing, 'width')
  if (thing !== undefined && width?.value.dimension !== 'length')
    notebook.need(targetOf(thing, 'width').path, 'the width is no length')
  if (thing === undefined) notebook.assume('wider than 1300 mm')
  return (width?.value.si ?? Number.POSITIVE_INFINITY) * 1000
}

/** The first function whose row was not seen, else the first. */
function rowOf(scope: Scope, size: LampSize): string {
  const part = scope.record.parts.find(({ id }) => id === scope.subject.id)
  const names = part === undefined ? [] : functionsOf(part)
  const name = names.find(one => lampRows[one]?.[size] === undefined) ?? names[0] ?? 'lamp'
  return `${name}-${size}`
}

/** A size is asked where it was measured, or where the rule has a row for it and the lamps are a pair. */
export function isSizeAsked(scope: Scope, size: LampSize): boolean {
  const part = scope.record.parts.find(({ id }) => id === scope.subject.id)
  if (part === undefined) return false
  const hasRow = functionsOf(part).some(name => lampRows[name]?.[size] !== undefined)
  return latest(part, size) !== null || hasRow
}
