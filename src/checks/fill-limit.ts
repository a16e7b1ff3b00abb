import { defineCheck } from '../checker/check.ts'
import { fullDepth } from '../checker/derived/full-depth.ts'
import { statedFill } from '../checker/derived/stated-fill.ts'
import { densityOfContents, expansionOfContents, fullVolume } from '../checker/derived/tank-contents.ts'
import { tankCapacity } from '../checker/derived/tank-volume.ts'
import { ifGiven } from '../checker/inputs/choose.ts'
import { constant } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'
import { steelExpansion } from '../checker/tables/expansion.ts'

const who = 'practice'
const source =
  '49 CFR 393.67 as makers and owners quote it (not read in the regulation itself): a liquid fuel tank is marked not to be filled to more than 95 % of its capacity; local codes decide'

const box = {
  'tank/length': '500.0 mm',
  'tank/width': '300.0 mm',
  'tank/height': '200.0 mm',
  'tank/wall': '2.00 mm',
}

/** How much may be put into a tank, or where it is filled to a line, whether that leaves room for the contents to grow. */
export default defineCheck({
  id: 'fill-limit',
  title: 'Fill limit',
  question: 'How much may be put in, leaving room for expansion?',
  subject: parts(['tank'], 'each tank that is fitted, modified, made or trial-fitted'),
  worthAsking: ['tank/fill-line', 'tank/filled-volume', 'volume/outside', 'tank/wall'],
  inputs: {
    fill: ifGiven(
      { symbol: 'V_fill', meaning: 'what may be put in', dimension: 'volume', of: 'tank/fill-line' },
      statedFill(),
      fullVolume('V_fill'),
    ),
    capacity: tankCapacity('C'),
    growth: expansionOfContents(),
    density: densityOfContents(),
    depth: fullDepth('h'),
    tankGrowth: constant({
      symbol: 'beta_t',
      meaning: 'by what share a steel tank grows for each kelvin',
      dimension: 'ratio',
      value: steelExpansion,
      unit: '1',
    }),
  },
  formula: [{ line: 'V_put = V_fill', unit: 'L', says: 'what is put in' }],
  beside: [
    {
      line: 'DeltaT = (C - V_fill) * 1 K / (beta * V_fill - beta_t * C)',
      unit: 'K',
      says: 'by which it may become warmer before it stands at the brim of a steel tank',
    },
    {
      line: 'p_boat = max(3 psi, 1.5 * rho * 1 gn * h)',
      unit: 'kPa',
      says: 'what the fuel system of a boat has to hold when it is proved tight (33 CFR 183.542); of a road vehicle its own authority says',
    },
  ],
  source: {
    title: 'OpenStax College Physics 2e',
    section:
      '13.2: 60.0 L of petrol in a steel tank that warm from 15 to 35 °C spill 1.10 L, which is 1.8 %; 5 % leaves room for some 55 K',
  },
  limit: {
    who,
    source,
    required: ['tank/fill-limit'],
    instead: { whenGiven: 'tank/fill-line', limit: { who, source, max: { share: 0.95, of: 'C' } } },
  },
  caution:
    'Fill outside, engine cold and battery off, with the nozzle on the neck; petrol that spills over finds the nearest spark. Prove a tank tight with water: air under pressure stores energy, and a tank that bursts with it throws its pieces. A tank that has held fuel is neither welded, cut nor ground before it was made safe.',
  examples: [
    {
      given: { 'tank/filled-volume': '58.4 L ± 0.3 L' },
      expect: 'pass',
      value: 55.48,
      source: '95 % of 58.4 L; no line is marked, so it is a working',
    },
    {
      given: { ...box, 'tank/fill-line': '180 mm ± 0 mm' },
      expect: 'pass',
      value: 26.4269,
      source:
        'Solid geometry: 496 × 296 mm × 180 mm, of 28.776 L to the brim, of which 95 % is 27.337 L; 10 % of room is more than the 1.8 % that petrol grows in OpenStax, 13.2',
    },
    {
      given: { ...box, 'tank/fill-line': '190 mm ± 0 mm' },
      expect: 'fail',
      value: 27.895,
      source: 'Solid geometry: 496 × 296 × 190 mm is 96.9 % of the inside',
    },
    {
      given: {
        'volume/outside': 'cylinder 1500 x 5000 mm',
        'tank/wall': '0.0 mm ± 0 mm',
        'tank/fill-line': '750 mm',
      },
      expect: 'pass',
      value: 4417.9,
      source: 'A published tank of 1.5 m across and 5 m long holds 4.417 865 m³ when it is half full',
    },
    {
      given: { 'tank/fill-line': '190 mm', 'tank/filled-volume': '28 L' },
      expect: 'missing',
      missing: ['example/length', 'example/width', 'example/height', 'example/wall'],
      source: 'How much a height means cannot be told without the shape',
    },
  ],
})
