import type { Quantity } from '../quantities/quantity.ts'
import type { Cut } from './cut-list.ts'

/** One rule for laying a loom, in words, and who set it. */
export interface LayingRule {
  readonly asks: string
  /** What it means for this loom; empty where it is the same for all. */
  readonly here: string
  readonly source: string
}

const clipEvery = 0.45 // m, ISO 10133:2012, 7.3
const leastSingle = 1.0e-6 // m², ISO 10133:2012, 7.7, a wire on its own longer than 200 mm
const leastSheathed = 0.75e-6 // m², the same, inside a sheath of several
const bendTimes = 10 // × outside diameter, US Army TM 1-1500-204-23-4
const mostWires = 75 // wires in a bundle, FAA handbooks
const mostBundle = 50.8 // mm over all, the same: 2 in

interface Laid {
  readonly cuts: readonly Cut[]
  /** Over all, worked out or measured; null where neither is known. */
  readonly diameterMm: number | null
  readonly isSheathed: boolean
}

/** How a loom is clipped, bent and led through metal, by published rules for boats and aircraft: no law for cars was found. */
export function layingRules({ cuts, diameterMm, isSheathed }: Laid): LayingRule[] {
  const longest = Math.max(0, ...cuts.map(({ writtenM }) => writtenM ?? 0))
  const clips = Math.max(0, Math.ceil(longest / clipEvery - 1e-9) - 1)
  const least = isSheathed ? leastSheathed : leastSingle
  return [
    {
      asks: 'Clip it every 450 mm at most, battery leads every 300 mm up to the isolator; 610 mm (24 in) by another',
      here:
        longest === 0
          ? ''
          : `${clips} ${clips === 1 ? 'clip' : 'clips'} and its two ends along the longest run of ${longest.toFixed(2)} m`,
      source: 'ISO 10133:2012, 7.3 and 7.4; 46 CFR 183.340(b)(4)',
    },
    {
      asks: 'Bend it no tighter than ten times its diameter, but at terminal strips',
      here: diameterMm === null ? '' : `${Math.ceil(bendTimes * diameterMm)} mm inside radius`,
      source: 'US Army TM 1-1500-204-23-4',
    },
    {
      asks: 'Between two clips it gives no more than 12.7 mm (½ in) by hand',
      here: '',
      source: 'FAA AC 43.13-1B, 11-118',
    },
    {
      asks: 'A grommet wherever it goes through metal, and a clip there unless it stays 9.5 mm (⅜ in) clear',
      here: '',
      source: 'FAA AC 43.13-1B, 11-115; 33 CFR 183.445(a)',
    },
    {
      asks: `A wire on its own has 1 mm² or 16 AWG at least, one in a sheath 0.75 mm² or 18 AWG`,
      here: thinWords(cuts, least),
      source: 'ISO 10133:2012, 7.7; 33 CFR 183.425(d) and (e)',
    },
    {
      asks: 'No more than 75 wires or 50.8 mm (2 in) in one bundle',
      here: crowdWords(cuts.length, diameterMm),
      source: 'FAA handbooks on wire groups and bundles',
    },
  ]
}

function thinWords(cuts: readonly Cut[], least: number): string {
  const isThin = (area: Quantity | undefined): boolean => (area?.si ?? Infinity) < least * (1 - 1e-9)
  const thin = cuts.filter(({ wire }) => isThin(wire.area?.value)).map(({ wire }) => wire.number)
  return thin.length === 0 ? 'none is thinner' : `thinner: ${thin.join(', ')}`
}

function crowdWords(wires: number, diameterMm: number | null): string {
  const isOver = wires > mostWires || (diameterMm ?? 0) > mostBundle
  const thick = diameterMm === null ? '' : `, ${diameterMm.toFixed(1)} mm`
  return `${wires} ${wires === 1 ? 'wire' : 'wires'}${thick}${isOver ? ': split it' : ''}`
}

/** What holds for the vehicle as a whole, and what 12 V does not spare you. */
export const layingNotes: readonly string[] = [
  'The way home through the metal is good at 5 mΩ or less from the battery’s earth to the device’s (FAA handbooks): measure it loaded.',
  'The battery moves 10 mm at most when pulled with twice its weight (ISO 10133, 5.2); 25 mm (1 in) with 400 N (90 lb) or twice its weight, whichever is less (33 CFR 183.420(a)).',
  'Direct current up to 60 V (IEC 60335-1, 3.4.2) or 120 V free of ripple (IEC 61558-1) counts as extra-low: 12 V and 24 V give no shock. They burn all the same: a spanner across a battery carries hundreds of amperes.',
]
