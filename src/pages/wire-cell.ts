import { latest, quantityAt } from '../record/lookups.ts'
import type { Thing } from '../record/record.ts'
import { type WireLook, wireLook } from '../wiring/wire-look.ts'
import type { Cell, Inline, WireCell } from './cells.ts'
import { figure, look, plain } from './inline.ts'

/** A wire of these properties, `cable` or `wire` their prefix: its look, its size and its colours in words. Null where nothing was said of it. */
export function wireOf(properties: Thing['properties'], prefix: string): WireCell | null {
  const area = quantityAt({ properties }, `${prefix}.area`)
  const colour = latest({ properties }, `${prefix}.colour`)?.value
  if (area === null && colour === undefined) return null
  return wireWith(area?.value.text ?? '', wireLook(colour?.type === 'words' ? colour.words.text : null))
}

/** A wire of this size and look, its code beside its colours as written. */
export function wireWith(size: string, wire: WireLook): WireCell {
  return { ground: wire.ground, band: wire.band, words: sizeAndColour(size, wire) }
}

function sizeAndColour(size: string, { written, code, ground }: WireLook): Inline[] {
  return [
    ...figure(size),
    ...(size !== '' && written !== '' ? [plain(' ')] : []),
    ...(written === '' ? [] : [plain(written)]),
    ...(code === null ? [] : [look('muted', ` ${code}`)]),
    ...(ground === 'unknown' ? [look('muted', ', no known colour')] : []),
  ]
}

/** The wire as a cell of a table. */
export function wireCell(properties: Thing['properties'], prefix: string): Cell {
  const wire = wireOf(properties, prefix)
  return { kind: 'wires', wires: wire === null ? [] : [wire] }
}

/** A wire that was read already, as a cell. */
export function conductorCell({ area, look: of }: { area: { value: { text: string } } | null; look: WireLook }): Cell {
  return { kind: 'wires', wires: area === null && of.written === '' ? [] : [wireWith(area?.value.text ?? '', of)] }
}
