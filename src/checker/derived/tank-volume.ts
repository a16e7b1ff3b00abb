import type { Volume } from '../../record/record.ts'
import { type FormulaLine, workFormula } from '../formula.ts'
import type { Found, Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { readAll, termsOf } from '../inputs/derived.ts'
import { value } from '../inputs/value.ts'
import { Notebook } from '../notebook.ts'
import { type Scope, withNotebook } from '../scope.ts'
import { type Term, workOut } from '../term.ts'
import { tooLargeInside, troubleOfShape } from './shape-trouble.ts'
import { type FoundShape, shapeVolume } from './shape-volume.ts'

const side = (key: string, symbol: string): Input<number> =>
  value({ of: `tank/${key}`, symbol, meaning: `outside ${key}`, dimension: 'length', unit: 'mm' })

const wall = value({ of: 'tank/wall', symbol: 'w', meaning: 'thickness of the wall', dimension: 'length', unit: 'mm' })
const sides = { length: side('length', 'L'), width: side('width', 'B'), height: side('height', 'H'), wall }
const sidesLine: FormulaLine = {
  line: 'V_in = (L - 2 * w) * (B - 2 * w) * (H - 2 * w)',
  unit: 'L',
  says: 'a box, inside its wall',
}

/** What a tank holds by its dimensions: its outside less the wall on every side, less the cut-outs as they stand inside. */
export function calculatedVolume(symbol = 'V'): Input<number> {
  return {
    symbol,
    meaning: 'volume by its dimensions',
    dimension: 'volume',
    reads: ['volume/outside', 'volume/less', 'tank/length', 'tank/width', 'tank/height', 'tank/wall'],
    formula: [sidesLine, { line: `${symbol} = V_in - sum(V_less)`, unit: 'L', says: 'less what stands inside' }],
    read: scope => readVolume(symbol, scope),
  }
}

/** A tank's capacity: the measured fill where there is one, else as calculated. */
export function tankCapacity(symbol = 'C'): Input<number> {
  const spec = { symbol, meaning: 'capacity', dimension: 'volume' } as const
  const measured = value({
    of: 'tank/filled-volume',
    ...spec,
    meaning: 'capacity, as measured when it was filled',
    unit: 'L',
  })
  return ifGiven({ ...spec, of: 'tank/filled-volume' }, measured, calculatedVolume(symbol))
}

function readVolume(symbol: string, scope: Scope): Found | null {
  const volume = scope.record.volumes.find(({ part }) => part === scope.subject.id)
  const inside = insideOf(volume, scope)
  if (inside === null) return null
  const shapes = lessShapes(volume, scope)
  if (shapes === null) return null
  const less = shapes.map((shape, at) => shapeVolume(shape, `V_less_${at + 1}`, null))
  const line = less.length === 0 ? `${symbol} = V_in` : `${symbol} = V_in - sum(V_less)`
  const says = less.length === 0 ? 'nothing stands inside' : 'less what stands inside'
  const term = workFormula([{ line, unit: 'L', says }], { V_in: inside, V_less: less })
  if (workOut(term) > 0) return { type: 'figure', term }
  scope.notebook.refuse(`volume:${scope.subject.id}/less`, 'what stands inside is larger than the tank')
  return null
}

/** The cut-outs and baffles of a tank; null where one of them cannot stand in it, and the notebook says why. */
export function lessShapes(volume: Volume | undefined, scope: Scope): FoundShape[] | null {
  const shapes = (volume?.less ?? []).map((held, at) =>
    foundShape(held, { path: `less.${at + 1}`, tag: `_${at + 1}` }, scope),
  )
  const thickness = wall.read(withNotebook(scope, new Notebook()))
  const inner = thickness?.type === 'figure' ? workOut(thickness.term) : 0
  const trouble = shapes.map(shape => troubleOfShape(shape, null)).find(words => words !== null)
  const words = trouble ?? (volume === undefined ? null : tooLargeInside(volume, inner))
  if (words === null) return shapes
  scope.notebook.refuse(`volume:${scope.subject.id}/less`, words)
  return null
}

function insideOf(volume: Volume | undefined, scope: Scope): Term | null {
  if (volume === undefined || volume.outside === null) {
    const found = readAll(sides, scope)
    return found === null ? null : withInside(workFormula([sidesLine], termsOf(sides, found)), scope)
  }
  const thickness = wall.read(scope)
  if (thickness?.type !== 'figure') return null
  const shape = foundShape(volume.outside, { path: 'outside', tag: '' }, scope)
  return isSound(shape, thickness.term, scope) ? withInside(shapeVolume(shape, 'V_in', thickness.term), scope) : null
}

/** Whether a tank's outside can hold anything; where not, the notebook says why. */
export function isSound(shape: FoundShape, wallThickness: Term, scope: Scope): boolean {
  const trouble = troubleOfShape(shape, wallThickness)
  if (trouble === null) return true
  const isWall = trouble.startsWith('the wall')
  scope.notebook.refuse(isWall ? `${scope.subject.id}/wall` : `volume:${scope.subject.id}/outside`, trouble)
  return false
}

/** A shape of the subject's volume with the path and the places of its figures. */
export function foundShape(
  held: FoundShape['held'],
  { path, tag }: { path: string; tag: string },
  { record, subject }: Scope,
): FoundShape {
  const figures =
    (held.session === null ? record.build : record.sessions.find(({ id }) => id === held.session))?.figures ?? []
  return {
    held,
    tag,
    path: `volume:${subject.id}/${path}`,
    approximateShare: record.build.approximateShare,
    placeOf: figure => figures.find(({ id }) => id === figure)?.place ?? null,
  }
}

/** A wall that leaves nothing inside is no tank: what was measured of it is wrong. */
function withInside(inside: Term, scope: Scope): Term | null {
  if (workOut(inside) > 0 && leavesRoom(inside)) return inside
  scope.notebook.need(`${scope.subject.id}/wall`, 'the wall as written leaves no inside')
  return null
}

/** Each side is more than two walls: two negative factors would make a volume again. */
function leavesRoom(inside: Term): boolean {
  if (inside.type !== 'step') return true
  const width = inside.uses.w
  const wallThickness = width === undefined || !('type' in width) ? 0 : workOut(width)
  return ['L', 'B', 'H', 'D'].every(name => {
    const used = inside.uses[name]
    return used === undefined || !('type' in used) || workOut(used) > 2 * wallThickness
  })
}
