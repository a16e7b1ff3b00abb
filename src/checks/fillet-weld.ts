import { defineCheck } from '../checker/check.ts'
import { loadForce } from '../checker/inputs/load-force.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

/** The shear stress in the throat of a fillet weld under its load. */
export default defineCheck({
  id: 'fillet-weld',
  title: 'Fillet weld',
  question: "Is the weld's throat enough for its load?",
  subject: parts(['weld'], 'each weld that is made, fitted or modified'),
  worthAsking: ['weld/leg-size', 'weld/load', 'weld/allowable-stress'],
  inputs: {
    load: loadForce('weld/load', 'F'),
    leg: value({ of: 'weld/leg-size', symbol: 'z', meaning: 'leg of the weld', dimension: 'length', unit: 'mm' }),
    length: value({
      of: 'weld/length',
      symbol: 'L',
      meaning: 'length of the weld, ends that are not sound left out',
      dimension: 'length',
      unit: 'mm',
    }),
    allowable: value({
      of: 'weld/allowable-stress',
      symbol: 'tau_a',
      meaning: 'allowable shear stress of the weld',
      dimension: 'pressure',
      unit: 'MPa',
      exact: true,
    }),
  },
  formula: [
    { line: 'a = 0.707 * z', unit: 'mm', says: 'throat of a fillet with equal legs' },
    { line: 'tau = F / (a * L)', unit: 'MPa', says: 'shear stress in the throat' },
  ],
  source: {
    title: "Shigley's Mechanical Engineering Design, 9th edition",
    section: 'table 9-2 and example 9-2: throat 0.707 h, load over throat × length',
  },
  limit: {
    who: 'builder',
    source:
      'the allowable shear stress as written in the notes; what it may be for the metal, the filler and the loading is for the standard of the place and a qualified welder to say',
    max: { share: 1, of: 'tau_a' },
  },
  notes: [
    'The load is taken as shared evenly along the weld and through its middle. A weld in aluminium is much weaker than its plate beside the bead (EN 1999-1-1): its allowable stress is not that of the plate.',
  ],
  caution:
    'A weld that holds brakes, steering, a seat, a belt or a tank is for a qualified welder, and for an inspector to see. Never weld, cut or grind a tank that has held fuel before it was made safe: what is left in its seams explodes. Move fuel and battery away and keep an extinguisher at hand.',
  examples: [
    {
      given: {
        'weld/load': '10.00 kN',
        'weld/leg-size': '6.0 mm',
        'weld/length': '80.0 mm',
        'weld/allowable-stress': '90 MPa',
      },
      expect: 'pass',
      value: 29.47,
      source: 'Shigley, table 9-2: 10 000 N over 0.707 × 6 × 80 = 339.4 mm²',
    },
    {
      given: {
        'weld/load': '5.00 kN',
        'weld/leg-size': '3.0 mm',
        'weld/length': '20.0 mm',
        'weld/allowable-stress': '90 MPa',
      },
      expect: 'fail',
      value: 117.87,
      source: 'Shigley, table 9-2: 5000 N over 0.707 × 3 × 20 = 42.42 mm²',
    },
    {
      given: {
        'weld/load': '99.10 kN',
        'weld/leg-size': '0.3750 in',
        'weld/length': '4.000 in',
        'weld/allowable-stress': '14.5 psi',
      },
      expect: 'fail',
      value: 144.8,
      source:
        "Shigley, example 9-2(a): a 3/8 in fillet of E70 carries 5.57 kip on each inch, so 22.28 kip = 99.1 kN on 4 in; 0.707 × 9.525 × 101.6 = 684.2 mm², 144.8 MPa = 21 kpsi, the example's allowable",
    },
    {
      given: {
        'weld/load': '200.0 kg',
        'weld/leg-size': '4.0 mm',
        'weld/length': '50.0 mm',
        'weld/allowable-stress': '14 MPa',
      },
      expect: 'marginal',
      value: 13.87,
      source: '200 kg × 9.80665 = 1961 N over 0.707 × 4 × 50 = 141.4 mm²; a leg written as 4.0 mm can be 3.95 mm',
    },
    {
      given: { 'weld/load': '18 kN', 'weld/leg-size': '5 mm', 'weld/allowable-stress': '90 MPa' },
      expect: 'missing',
      missing: ['example/length'],
      source: 'The weld was not measured',
    },
  ],
})
