import { type Aspect, defineCheck } from '../checker/check.ts'
import { isSizeAsked, lampEnd, lampRow } from '../checker/derived/lamp-row.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'
import type { LampSize } from '../checker/tables/lamp-rules.ts'

const size = (key: LampSize, symbol: string, meaning: string) =>
  value({ of: `lamp/${key}`, symbol, meaning, dimension: 'length', unit: 'mm' })
const source =
  'UN R48, only the rows that were read in it (6.19.4, daytime running lamps); for every other row look into the regulation or ask the authority that approves the vehicle'

const law = { who: 'law', source } as const

const day = {
  'lamp/function': 'daytime running lamp',
  'lamp/height-top': '700 mm ± 3 mm',
  'lamp/height-bottom': '640 mm ± 3 mm',
  'lamp/spacing': '740 mm ± 3 mm',
  'vehicle/width': '1520 mm',
}
const asked =
  (...sizes: LampSize[]): NonNullable<Aspect['worthAsking']> =>
  scope =>
    sizes.some(one => isSizeAsked(scope, one))

/** Whether each lamp is where the rule wants one of its function: the top of its lit surface, the bottom, the space between a pair, the edge. */
export default defineCheck({
  id: 'lamp-position',
  title: 'Lamp position',
  question: 'Is every lamp at a height, spacing and edge distance that the rule gives for its function?',
  subject: parts(['lamp'], 'each lamp that is fitted, modified, made or trial-fitted'),
  worthAsking: ['lamp/height-top', 'lamp/height-bottom', 'lamp/edge-distance', 'lamp/spacing'],
  inputs: {
    top: size('height-top', 'h_top', 'from the ground to the top of its lit surface'),
    bottom: size('height-bottom', 'h_bottom', 'from the ground to the bottom of its lit surface'),
    spacing: size('spacing', 's', 'from it to its fellow on the other side'),
    edge: size('edge-distance', 'e', 'from its lit surface to the outer edge'),
    topEnd: lampEnd('height-top', 'h_max'),
    bottomEnd: lampEnd('height-bottom', 'h_min'),
    spacingEnd: lampEnd('spacing', 's_min'),
    edgeEnd: lampEnd('edge-distance', 'e_max'),
    topRow: lampRow('height-top'),
    bottomRow: lampRow('height-bottom'),
    spacingRow: lampRow('spacing'),
    edgeRow: lampRow('edge-distance'),
  },
  aspects: {
    'height-top': {
      formula: [{ line: 'h_lit = h_top', unit: 'mm', says: 'the top of the lit surface' }],
      limit: { ...law, by: 'topRow', max: { share: 1, of: 'h_max' } },
      worthAsking: asked('height-top', 'height-bottom'),
    },
    'height-bottom': {
      formula: [{ line: 'h_lit = h_bottom', unit: 'mm', says: 'the bottom of the lit surface' }],
      limit: { ...law, by: 'bottomRow', min: { share: 1, of: 'h_min' } },
      worthAsking: asked('height-top', 'height-bottom'),
    },
    spacing: {
      formula: [{ line: 's_lit = s', unit: 'mm', says: 'the space between the pair' }],
      limit: { ...law, by: 'spacingRow', min: { share: 1, of: 's_min' } },
      worthAsking: asked('spacing'),
    },
    'edge-distance': {
      formula: [{ line: 'e_lit = e', unit: 'mm', says: 'the distance to the outer edge' }],
      limit: { ...law, by: 'edgeRow', max: { share: 1, of: 'e_max' } },
      worthAsking: asked('edge-distance'),
    },
  },
  source: {
    title: 'UN Regulation No. 48',
    section:
      '6.19.4: the lit surface of daytime running lamps, its lowest and highest points and the space between the inner edges',
  },
  limit: null,
  notes: ['Heights are of the vehicle unladen on level ground (from memory).'],
  caution: null,
  examples: [
    { given: day, aspect: 'height-top', expect: 'pass', value: 700, source: 'UN R48, 6.19.4: at most 1500 mm' },
    {
      given: { ...day, 'lamp/height-bottom': '240 mm ± 3 mm' },
      aspect: 'height-bottom',
      expect: 'fail',
      value: 240,
      source: 'UN R48, 6.19.4: at least 250 mm',
    },
    {
      given: { ...day, 'lamp/height-bottom': '250 mm ± 3 mm' },
      aspect: 'height-bottom',
      expect: 'marginal',
      value: 250,
      source: 'UN R48, 6.19.4: at its limit of 250 mm, and it may be 247 mm',
    },
    {
      given: { ...day, 'lamp/spacing': '500 mm ± 3 mm' },
      aspect: 'spacing',
      expect: 'fail',
      value: 500,
      source: 'UN R48, 6.19.4: at least 600 mm apart',
    },
    {
      given: { ...day, 'lamp/spacing': '500 mm ± 3 mm', 'vehicle/width': '1250 mm' },
      aspect: 'spacing',
      expect: 'pass',
      value: 500,
      source: 'UN R48, 6.19.4: on a vehicle narrower than 1300 mm 400 mm will do',
    },
    {
      given: {
        'lamp/function': 'stop-lamp',
        'lamp/height-top': '800 mm ± 0 mm',
        'limit/lamp-position/stop-lamp-height-top': 'max 1500 mm, read in the regulation of the place',
      },
      aspect: 'height-top',
      expect: 'pass',
      value: 800,
      source:
        'Lighting regulations of the United Kingdom, SI 1989/1796, schedule 12: stop lamps at most 1500 mm, set in build.md',
    },
    {
      given: { 'lamp/function': 'stop lamp', 'lamp/edge-distance': '58 mm' },
      aspect: 'edge-distance',
      expect: 'missing',
      missing: ['limit/stop-lamp'],
      source: 'The row of UN R48 was not seen, so nothing is said',
    },
  ],
})
