import { defineCheck } from '../checker/check.ts'
import { circuitCurrent } from '../checker/derived/circuit-current.ts'
import { contactRating, contactsInUse, inrushFactors, throughSubject } from '../checker/derived/contact-load.ts'
import { each } from '../checker/inputs/each.ts'

const through = (load: string, use: string, id = 'lamps') => ({
  [`circuit:${id}/load`]: load,
  [`circuit:${id}/use`]: use,
  [`circuit:${id}/through`]: '[example]',
})

/** Whether a contact carries what it switches, with the rush of current when it closes. */
export default defineCheck({
  id: 'relay-load',
  title: 'Relay load',
  question: 'Does each relay or switch that a circuit goes `through` carry its load, inrush counted?',
  subject: contactsInUse(),
  worthAsking: 'always',
  inputs: {
    loads: each(
      { symbol: 'I_i', meaning: 'loads through the contact', dimension: 'current', of: throughSubject },
      circuitCurrent('I_i'),
    ),
    factors: inrushFactors('f_i'),
    rating: contactRating('I_r'),
  },
  formula: [{ line: 'I_c = sum(f_i * I_i)', unit: 'A', says: 'the loads, each times its factor' }],
  onlyWorsens: ['I_i'],
  source: {
    title: 'FAA AC 43.13-1B, change 1',
    section: 'table 11-4: rating of a switch = factor × continuous current',
  },
  limit: { who: 'maker', source: "the maker's rating of the contact", max: { share: 1, of: 'I_r' } },
  notes: [
    'Where a relay switches the load and a switch only its coil, name the relay alone in `through`.',
    'A coil of 12 V is a load of its own, 150 to 200 mA (80 to 60 Ω) by a guide to relays: write it as a circuit where it stays on for hours.',
  ],
  caution:
    'A contact that welds shut leaves its load on with the key out. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: { 'relay/rating': '30 A', ...through('6 A ± 0 A', 'lighting'), 'build/nominal': '12 V' },
      expect: 'pass',
      value: 30,
      source: 'AC 43.13-1B, table 11-4, 12 V: a lamp counts five times, at the limit',
    },
    {
      given: { 'relay/rating': '30 A', ...through('6.1 A ± 0 A', 'lighting'), 'build/nominal': '12 V' },
      expect: 'fail',
      value: 30.5,
      source: 'AC 43.13-1B, table 11-4, 12 V: just past the rating',
    },
    {
      given: { 'relay/rating': '30 A', ...through('4 A ± 0 A', 'lighting'), 'build/nominal': '24 V' },
      expect: 'fail',
      value: 32,
      source: 'AC 43.13-1B, table 11-4, 24 V: a lamp counts eight times',
    },
    {
      given: {
        'switch/rating': '30 A',
        ...through('7 A', 'pump', 'fuel-pump'),
        ...through('96 W', 'heating', 'seat-heater'),
        ...through('1 A', 'ignition', 'coil'),
        ...through('1 A', 'signal', 'horn'),
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 26,
      source:
        'AC 43.13-1B, table 11-4, 12 V: motor 2 × 7 A, resistive 1 × 96 W / 12 V, coil and horn inductive, 2 × 1 A each',
    },
    {
      given: {
        'relay/rating': '30 A',
        'relay/lamp-rating': '10 A',
        ...through('9 A', 'lighting'),
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 9,
      source: "The maker's own lamp rating goes first and takes no factor",
    },
    {
      given: { 'relay/coil-current': '160 mA', ...through('6 A', 'lighting'), 'build/nominal': '12 V' },
      expect: 'missing',
      missing: ['example/rating'],
      source: 'What the contact may carry is not written',
    },
    {
      given: { 'relay/rating': '30 A', ...through('6 A', 'lighting'), 'build/nominal': '48 V' },
      expect: 'missing',
      missing: ['build:electrical/nominal'],
      source: 'AC 43.13-1B, table 11-4, has no row for 48 V',
    },
  ],
})
