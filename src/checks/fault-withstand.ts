import { defineCheck } from '../checker/check.ts'
import { greatestFaultCurrent } from '../checker/derived/fault-current.ts'
import { cableSection, cableWithstand } from '../checker/derived/withstand.ts'
import { value } from '../checker/inputs/value.ts'
import { circuits } from '../checker/subjects.ts'

/** Whether the cable survives what the fuse lets through before it opens. */
export default defineCheck({
  id: 'fault-withstand',
  title: 'Fault withstand',
  question: 'Does the cable survive until the fuse opens?',
  subject: circuits('each circuit that is live'),
  worthAsking: ['circuit/fuse.let-through', 'circuit/fuse.clears', 'circuit/fuse.breaking'],
  inputs: {
    energy: value({
      of: 'circuit/fuse.let-through',
      symbol: 'W_f',
      meaning: 'I²t that the fuse lets through, by its maker',
      dimension: 'let-through',
      unit: 'A2s',
      exact: true,
    }),
    withstand: cableWithstand('W_c'),
    greatest: greatestFaultCurrent(),
    section: cableSection(),
  },
  formula: [{ line: 'W = W_f', unit: 'A2s', says: 'what the fuse lets through' }],
  beside: [
    { line: 'S_0 = S * sqrt(W_f / W_c)', unit: 'mm2', says: 'the least section that survives it' },
    { line: 't_f = W_f / I_g^2', unit: 's', says: 'how long the fuse takes at the greatest current' },
  ],
  remark: {
    of: ['W_f', 'I_g'],
    say: ({ W_f, I_g }) => {
      const seconds = (W_f?.value ?? Number.NaN) / (I_g?.value ?? Number.NaN) ** 2
      return seconds > 5
        ? 'The fuse takes more than 5 s even at the greatest current: the formula, which lets no heat go, asks too much there.'
        : null
    },
  },
  source: {
    title: 'IEC 60364-4-43 with IEC 60364-5-54',
    section: '434.5.2: I²t ≤ k²S² up to 5 s; annex A of 5-54: k of copper from 226 and 234.5 °C, from memory',
  },
  limit: {
    who: 'standard',
    source: 'IEC 60364-4-43, 434.5.2: I²t ≤ k²S²; local codes and licensed practice decide',
    max: { share: 1, of: 'W_c' },
  },
  caution:
    'A cable that a short has cooked once must be replaced, whatever it looks like. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: {
        'circuit/fuse.let-through': '5760 A²s',
        'circuit/cable.area': '0.75 mm²',
        'circuit/cable.insulation': '70 °C',
      },
      expect: 'pass',
      value: 5760,
      source:
        'IEC 60364-4-43 adiabatic equation, an example published by the IET: 120 A for 0.4 s, 5760 A²s, with k = 115 needs 0.66 mm²; 0.75 mm² withstands 7464 A²s',
    },
    {
      given: {
        'circuit/fuse.let-through': '5760 A²s',
        'circuit/cable.area': '0.5 mm²',
        'circuit/cable.insulation': '70 °C',
      },
      expect: 'fail',
      value: 5760,
      source: 'The same example: 0.5 mm² is less than the 0.66 mm² that it needs',
    },
    {
      given: {
        'circuit/fuse.let-through': '3600000 A²s',
        'circuit/cable.area': '16 mm²',
        'circuit/cable.insulation': '70 °C',
      },
      expect: 'fail',
      value: 3600000,
      source:
        'BS 7671 adiabatic equation, published: 3000 A for 0.4 s with k = 115 needs 16.5 mm², so 16 mm² is just too small',
    },
    {
      given: {
        'circuit/fuse.let-through': '1080 A²s',
        'circuit/cable.area': '4 mm²',
        'circuit/cable.insulation': '105 °C',
        'circuit/length': '1.8 m',
        'circuit/return': 'chassis',
        'circuit/joints': '5 mΩ',
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 1080,
      source:
        'IEC 60364-5-54, annex A, from memory: k = 226 × √ln(394.5/339.5) = 87.56, so k²S² is 122 677 A²s; a cable that starts hotter than 70 °C has less than k = 115',
    },
    {
      given: { 'circuit/fuse.clears': '280 A', 'circuit/cable.area': '16 mm²', 'circuit/cable.insulation': '105 °C' },
      expect: 'missing',
      missing: ['circuit:example/fuse.let-through'],
      source: 'Only its maker knows what a fuse lets through',
    },
    {
      given: {
        'circuit/fuse.let-through': '1080 A²s',
        'circuit/cable.area': '4 mm²',
        'circuit/cable.insulation': '200 °C',
      },
      expect: 'missing',
      missing: ['circuit:example/cable.insulation'],
      source: 'An insulation of 200 °C is no PVC, so 160 °C is not where it ends',
    },
  ],
})
