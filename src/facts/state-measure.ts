import type { Nodes } from 'mdast'
import type { MeasureNode } from '../../plugins/measure/node.ts'
import type { Place } from '../findings/place.ts'
import type { Around } from './around.ts'
import { figureOf } from './body-figure.ts'
import { placeOfPosition } from './body-place.ts'
import type { Words } from './fact.ts'
import { printPath, readPath } from './identifier.ts'
import { type KindsStated, kindOf } from './kinds-stated.ts'
import { dimensionsMeasured, type MeasuredProperty, reportNearProperty } from './measured-property.ts'
import { markWhole } from './privacy.ts'
import { quoted } from './quoted.ts'
import { report, type Sheet } from './sheet.ts'
import { addMeasured, type Measured } from './state-measured.ts'

/** `:measure[860 mm]{of="fuel-tank/length" with="steel tape"}`: the figure of the label under that path. */
export function stateMeasure(sheet: Sheet, node: MeasureNode, { privacy, kinds }: Around): void {
  if (node.position === undefined) return
  const place = placeOfPosition(node.attributePositions.of ?? node.position, sheet.file)
  const property = node.of === null ? null : measuredAt(sheet, { path: node.of, place, kinds })
  if (node.of === null) {
    const message = 'Unexpected `:measure` without `of`, expected a path such as `of="fuel-tank/length"`'
    report(sheet, 'directive', { place, message })
  }
  if (property === null) return
  const marked = (text: string | null): Words | null =>
    text === null ? null : { text, marks: markWhole(text, privacy) }
  const how = { with: marked(node.with), note: marked(node.note), supersedes: node.supersedes }
  stateFigureOf(sheet, node.children, { ...property, ...how })
}

/** States the one figure that nodes of the body hold. */
export function stateFigureOf(sheet: Sheet, nodes: readonly Nodes[], measured: Measured): void {
  const path = printPath(measured.subject, measured.property)
  const read = figureOf(sheet, nodes, { path, role: 'measurement', dimensions: dimensionsMeasured(measured) })
  if (read !== null) addMeasured(sheet, measured, { ...read, value: { type: 'quantity', quantity: read.quantity } })
}

/** The property that a path of the body names; one that names no property is asked which. */
export function measuredAt(
  sheet: Sheet,
  { path, place, kinds }: { path: string; place: Place; kinds: KindsStated },
): MeasuredProperty | null {
  const read = readPath(path)
  if (read === null || read.property === null) {
    const message = `Unexpected ${quoted(path)} as what was measured, expected a path such as \`fuel-tank/length\``
    report(sheet, 'unknown-target', { place, message, about: read === null ? [] : [path] })
    return null
  }
  const { subject, bare, property } = read
  const measured = { subject, bare, property, kind: kindOf(read, kinds), keyPlace: place }
  reportNearProperty(sheet, measured)
  return measured
}
