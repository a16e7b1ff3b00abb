import { defineCheck } from '../checker/check.ts'
import { correctedRating } from '../checker/derived/cable-rating.ts'
import { circuitCurrent } from '../checker/derived/circuit-current.ts'
import { circuits } from '../checker/subjects.ts'

/** Whether a cable carries its load where it runs: in the heat of its zone, beside the loaded cables of its loom. */
export default defineCheck({
  id: 'cable-rating',
  title: 'Cable rating',
  question:
    "Does the cable carry the load, for its insulation, its zone's temperature and the loaded cables in its loom?",
  subject: circuits('each circuit that is live; one that starts the engine only where the maker rates its cable', {
    not: [{ key: 'duty', is: ['starting'], unlessGiven: 'cable.rating' }],
  }),
  worthAsking: ['circuit/cable.area', 'circuit/cable.rating', 'circuit/cable.insulation'],
  inputs: { load: circuitCurrent(), rating: correctedRating() },
  formula: [{ line: 'I_load = I', unit: 'A', says: 'the load' }],
  onlyWorsens: [],
  source: {
    title: '33 CFR 183.425',
    section: 'table 5 with its notes 1 and 2: one conductor at 30 °C, less in an engine space, less in a bundle',
  },
  limit: {
    who: 'standard',
    source:
      '33 CFR 183.425 for a gauge and ISO 6722 data sheets for a section, corrected for zone and loom; for boats the first is law, for cars no law was found, and local codes and licensed practice decide',
    max: { share: 1, of: 'I_z' },
  },
  caution:
    'A cable that is loaded beyond its rating softens its insulation and can set a loom alight. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: {
        'circuit/load': '20.8 A ± 0 A',
        'circuit/cable.area': '14 AWG',
        'circuit/cable.insulation': '105 °C',
        'circuit/loom': 'body-loom',
        'circuit:horn/loom': 'body-loom',
        'circuit:lamps/loom': 'body-loom',
        'circuit/zone': 'engine-bay',
        'build/nominal': '12 V',
        'build/zones.engine-bay': '50 °C ± 0 °C',
      },
      expect: 'pass',
      value: 20.8,
      source:
        '33 CFR 183.425, table 5, notes 1 and 2, as a cable maker prints the product: 14 AWG, three conductors in an engine space, 20.8 A; 35 A × √(55/75) × 0.7 is 20.98 A',
    },
    {
      given: {
        'circuit/load': '25.0 A',
        'circuit/cable.area': '16 AWG',
        'circuit/cable.insulation': '105 °C',
        'build/nominal': '12 V',
        'build/ambient': '30.0 °C ± 0 °C',
      },
      expect: 'marginal',
      value: 25,
      source: '33 CFR 183.425, table 5: 16 AWG, 105 °C, carries 25 A; 25.0 A may be 25.05 A',
    },
    {
      given: {
        'circuit/load': '25 A ± 0 A',
        'circuit/cable.area': '16 AWG',
        'circuit/cable.insulation': '105 °C',
        'build/nominal': '12 V',
        'build/ambient': '30 °C ± 0 °C',
      },
      expect: 'pass',
      value: 25,
      source: '33 CFR 183.425, table 5: 16 AWG, 105 °C, carries 25 A; an exact 25 A is at the limit',
    },
    {
      given: {
        'circuit/load': '25.1 A ± 0 A',
        'circuit/cable.area': '16 AWG',
        'circuit/cable.insulation': '105 °C',
        'build/nominal': '12 V',
        'build/ambient': '30 °C ± 0 °C',
      },
      expect: 'fail',
      value: 25.1,
      source: '33 CFR 183.425, table 5: 16 AWG, 105 °C, carries 25 A; just past it',
    },
    {
      given: {
        'circuit/load': '360 W ± 2 W',
        'circuit/cable.area': '2.5 mm²',
        'circuit/cable.insulation': '105 °C',
        'build/nominal': '12 V',
        'build/ambient': '30 °C',
      },
      expect: 'fail',
      value: 30,
      source: "Makers' data sheets of ISO 6722 class B cable: 2.5 mm² carries 29 A; 360 W / 12 V = 30 A",
    },
    {
      given: {
        'circuit/load': '200 A',
        'circuit/duty': 'starting',
        'circuit/cable.area': '35 mm²',
        'circuit/cable.insulation': '105 °C',
        'circuit/cable.rating': '240 A',
        'build/nominal': '12 V',
        'build/ambient': '30 °C',
      },
      expect: 'pass',
      value: 200,
      source: '33 CFR 183.425(g) leaves cranking conductors out; the maker rates this one, so it is asked',
    },
    {
      given: {
        'circuit/load': '10 A',
        'circuit/cable.area': '0.35 mm²',
        'circuit/cable.insulation': '105 °C',
        'build/nominal': '12 V',
        'build/ambient': '30 °C',
      },
      expect: 'missing',
      missing: ['circuit:example/cable.rating'],
      source: 'The data sheets begin at 0.5 mm²; below that only the maker can say',
    },
    {
      given: {
        'circuit/load': '10 A',
        'circuit/cable.area': '2.5 mm²',
        'build/nominal': '12 V',
        'build/ambient': '30 °C',
      },
      expect: 'missing',
      missing: ['circuit:example/cable.insulation'],
      source: 'Without the temperature of the insulation the rating cannot be corrected for its zone',
    },
  ],
})
