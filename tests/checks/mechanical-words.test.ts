import { describe, expect, test } from 'vitest'
import { sideOf } from '../../src/checker/derived/fuel-line.ts'
import { functionsIn } from '../../src/checker/derived/lamp-function.ts'
import axleLoads from '../../src/checks/axle-loads.ts'
import boltLoad from '../../src/checks/bolt-load.ts'
import controlCable from '../../src/checks/control-cable.ts'
import fillLimit from '../../src/checks/fill-limit.ts'
import fuelLine from '../../src/checks/fuel-line.ts'
import restraint from '../../src/checks/restraint.ts'
import tankMass from '../../src/checks/tank-mass.ts'
import type { Given } from '../checker/record-maker.ts'
import { answersTo, answerTo } from './answer-to.ts'

const tank = { 'tank/mass': '10 kg', 'tank/filled-volume': '50 L', 'tank/contents-density': '0.8 kg/L' }
const straps = {
  'strap:tank-straps/count': '2',
  'strap:tank-straps/width': '30 mm',
  'strap:tank-straps/thickness': '2 mm',
  'strap:tank-straps/yield-stress': '210 MPa',
}
const bolts = (id: string): Given => ({
  [`bolt:${id}/count`]: '2',
  [`bolt:${id}/stress-area`]: '20.1 mm²',
  [`bolt:${id}/proof-stress`]: '580 MPa',
})
const restraintOf = (given: Given) => answerTo(restraint, { given: { ...tank, ...given } })

describe('what holds a tank', () => {
  test('is told from the weakest to the strongest, and by how much the weakest would do', () => {
    expect(restraintOf({ ...straps, ...bolts('tank-bolts') }).working.notes).toContain(
      'Weakest first: bolts 234 of 435 MPa, 53.8 %; straps 39.2 of 140 MPa, 28 %. They would carry 1.86 times the design force.',
    )
  })

  test('each kind has its lines and its share beside the answer, the weakest first', () => {
    const { beside } = restraintOf({ ...straps, ...bolts('tank-bolts') }).working
    // 48 kg × 20 × 9.80665 over 2 × 20.1 mm² of 435 MPa, and over 240 mm² of strap of 140 MPa.
    expect(beside.map(({ symbol, result }) => `${symbol.text} ${result.text.replaceAll('\u202f', ' ')}`)).toEqual([
      's_1 53.84 %',
      'σ_strap 39.2266 MPa',
      'σ_strap,a 140 MPa',
      's_2 28.02 %',
    ])
  })

  test.each([
    ['tank-bolts', true],
    ['strap-bolts', true],
    ['beam-bolts', false],
    ['seat-bolts', false],
    ['m8-bolts', false],
  ])('%s without a system belong to the tank: %s', (id, belongs) => {
    const paths = restraintOf({ ...straps, ...bolts(id) }).inputs.map(({ path }) => path)
    const notes = restraintOf({ ...straps, ...bolts(id) }).working.notes.join(' ')
    expect([paths.some(path => path.startsWith(id)), notes.includes('bolts')]).toEqual([belongs, belongs])
  })

  test('straps of another tank are left to it', () => {
    const other = { 'tank:aux-tank/mass': '5 kg', 'strap:aux-tank-straps/width': '20 mm' }
    expect(restraintOf({ ...straps, ...other }).verdict).toBe('pass')
  })

  test('a strap of the battery holds no tank', () => {
    expect(answersTo(restraint, { ...tank, 'strap:battery-strap/width': '20 mm' })).toEqual([])
  })

  test('a bracket that is only folded is left out, and said', () => {
    expect(restraintOf({ ...straps, 'bracket:tank-bracket/thickness': '3 mm' }).working.notes).toContain(
      'tank bracket is left out: what it can carry is not written.',
    )
  })

  const thin = { ...straps, 'strap:tank-straps/thickness': '0.5 mm ± 0 mm' }

  test.each([
    ['max 10 gn, for the field only', 'waived', 10],
    ['max 10 gn', 'fail', 10],
    ['max 40 gn, to be sure', 'fail', 40],
    ['max 200 MPa, tested', 'waived', 20],
  ])('a limit of build.md of %s is %s, worked at %i gₙ', (limit, verdict, acceleration) => {
    const answer = restraintOf({ ...thin, 'limit/restraint': limit })
    const expected = (48 * acceleration * 9.80665) / 60 // MPa, 48 kg over 60 mm²
    expect([answer.verdict, Number(answer.result?.value.toFixed(6))]).toEqual([verdict, Number(expected.toFixed(6))])
  })
})

describe('axle loads', () => {
  const car = {
    'vehicle/wheelbase': '2400 mm',
    'part:engine/mass': '200 kg',
    'part:engine/at': '0 mm',
    'part:tub/mass': '300 kg',
    'part:tub/at': '1200 mm',
    'axle:rear-axle/rating': '400 kg',
  }
  const notesOf = (given: Given): readonly string[] =>
    answerTo(axleLoads, { given: { ...car, ...given }, aspect: 'rear' }).working.notes

  test('a weighed load that the parts do not come to is said, and moves no verdict', () => {
    const given = { 'axle:rear-axle/load': '190 kg ± 5 kg' }
    expect(notesOf(given)).toContain(
      'The rear axle was weighed at 190 kg; the parts come to 150 kg, 40 kg less, which is more than either uncertainty: something is not weighed, not in place or not on it any more.',
    )
    expect(answerTo(axleLoads, { given: { ...car, ...given }, aspect: 'rear' }).verdict).toBe('pass')
  })

  test('one that they do come to is said too', () => {
    expect(notesOf({ 'axle:rear-axle/load': '152 kg ± 5 kg' })).toContain(
      'The rear axle was weighed at 152 kg; the parts come to 150 kg, 2 kg less, which is within their uncertainties.',
    )
  })

  test('parts without a mass or a place are named', () => {
    expect(notesOf({ 'part:horn/mass': '1 kg' })).toContain(
      '2 on the vehicle without a mass or a place are left out: horn; rear axle.',
    )
  })

  test('a part that was taken off again does not count', () => {
    const off = { 'part:old-seat/mass': '40 kg', 'part:old-seat/at': '1200 mm', 'state/old-seat': 'removed' }
    const rear = (given: Given) => answerTo(axleLoads, { given: { ...car, ...given }, aspect: 'rear' }).result?.value
    expect(rear(off)).toBe(rear({}))
  })

  test('an axle without a rating is missing, no axle at all is a working', () => {
    const { 'axle:rear-axle/rating': _, ...bare } = car
    const verdictOf = (given: Given) => {
      const { verdict, missing, limit } = answerTo(axleLoads, { given, aspect: 'rear' })
      return [verdict, missing, limit === null]
    }
    expect(verdictOf({ ...bare, 'axle:rear-axle/ratio': '4.06' })).toEqual(['missing', ['rear-axle/rating'], false])
    expect(verdictOf(bare)).toEqual(['pass', [], true])
  })

  test('which end an axle is at is told by its place, else by its name', () => {
    const placed = { ...car, 'axle:beam/at': '2390 mm', 'axle:beam/load': '190 kg' }
    const answer = answerTo(axleLoads, { given: placed, aspect: 'rear' })
    expect([answer.result?.value, answer.limit?.max]).toEqual([190, 400])
  })
})

describe('a bolt', () => {
  const bolt = { 'bolt/load': '2.9 kN', 'bolt/thread': 'M12', 'bolt/proof-stress': '580 MPa' }
  const torqueOf = (given: Given): string[] =>
    answerTo(boltLoad, { given: { ...bolt, ...given } }).working.beside.map(
      ({ symbol, result }) => `${symbol.text} ${result.text}`,
    )

  test.each([
    [{ 'bolt/finish': 'zinc' }, ['T 87.97\u202fN·m']],
    [{ 'bolt/finish': 'plain' }, ['T 132\u202fN·m']],
    [{ 'bolt/k-factor': '0.15' }, ['T 65.98\u202fN·m']],
    [{}, []],
    [{ 'bolt/finish': 'cadmium' }, []],
  ])('with %j has the torque %j: K × 12 mm × 36.66 kN', (given, torque) => {
    expect(torqueOf(given)).toEqual(torque)
  })

  test('nothing is missing for want of a finish', () => {
    expect(answerTo(boltLoad, { given: bolt }).missing).toEqual([])
  })
})

describe('a control cable', () => {
  test('each end of what is required stands once among the values', () => {
    const given = { 'control-cable/length': '896 mm', 'control-cable/required-length': '890 mm to 902 mm' }
    const { values } = answerTo(controlCable, { given, aspect: 'length' }).working
    expect(values.map(({ symbol }) => symbol?.text)).toEqual(['L', 'L_min', 'L_max'])
  })
})

describe('what is worked out beside a fill', () => {
  const tank = { 'tank/filled-volume': '58.4 L' }
  const besides = (given: Given): string[] =>
    answerTo(fillLimit, { given: { ...tank, ...given } }).working.beside.map(({ symbol }) => symbol.text)

  test.each([
    [{}, []],
    [{ 'tank/contents': 'petrol' }, ['ΔT']],
    [
      { 'tank/contents-density': '0.8 kg/L', 'volume/outside': 'box 500 x 300 x 400 mm', 'tank/wall': '1 mm' },
      ['p_boat'],
    ],
    [{ 'tank/contents': 'rape oil' }, []],
  ])('with %j it is %j, each line where its own figures are there', (given, symbols) => {
    expect(besides(given)).toEqual(symbols)
    expect(answerTo(fillLimit, { given: { ...tank, ...given } }).missing).toEqual([])
  })
})

describe('a fuel line', () => {
  // ρ g h: 775 kg/m³ × 9.80665 × 0.4 m = 3.040 kPa.
  test.each([
    ['400 mm', 3.04],
    ['-400 mm', -3.04],
  ])('that rises by %s loses %d kPa more', (rise, more) => {
    const given = {
      'hose/flow': '95 L/h',
      'hose/bore': '8 mm',
      'hose/length': '550 mm',
      'tank:fuel-tank/contents': 'petrol',
    }
    const [level, risen] = [given, { ...given, 'hose/rise': rise }].map(
      one => answerTo(fuelLine, { given: one, aspect: 'loss' }).result?.value ?? Number.NaN,
    )
    expect((risen ?? Number.NaN) - (level ?? Number.NaN)).toBeCloseTo(more, 3)
  })

  test.each([
    ['suction-hose', 'suction hose', 'suction'],
    ['hose-1', 'Fuel hose, tank to pump', 'suction'],
    ['fuel-return-pipe', 'fuel return pipe', 'return'],
    ['feed-pipe', 'Pipe, pump to engine', 'pressure'],
    ['fuel-hose', 'fuel hose', null],
  ])('%s, %s, lies on the side %s', (id, name, side) => {
    expect(sideOf({ id, name })).toBe(side)
  })

  test.each([
    ['fuel', true],
    ['cooling', false],
    ['controls', false],
  ])('a pipe of the system %s carries fuel: %s', (system, carries) => {
    const given = { 'pipe/flow': '95 L/h', 'pipe/bore': '6 mm', 'pipe/system': system }
    expect(answersTo(fuelLine, given).length > 0).toBe(carries)
  })
})

describe('what a tank holds', () => {
  test.each([
    ['petrol', 'pass', []],
    ['unleaded petrol', 'pass', []],
    ['rape oil', 'missing', ['example/contents-density']],
  ])('%s: %s', (contents, verdict, missing) => {
    const answer = answerTo(tankMass, {
      given: { 'tank/mass': '9 kg', 'tank/filled-volume': '50 L', 'tank/contents': contents },
    })
    expect([answer.verdict, answer.missing]).toEqual([verdict, missing])
  })
})

describe('the words for a lamp', () => {
  test.each([
    ['dipped beam, main beam, front position', ['dipped-beam', 'main-beam', 'front-position-lamp']],
    ['rear position, stop, direction indicator', ['rear-position-lamp', 'stop-lamp', 'direction-indicator']],
    ['rear-fog-lamp', ['rear-fog-lamp']],
    ['tail and brake lamp', ['rear-position-lamp', 'stop-lamp']],
    ['rear retro-reflector', ['rear-reflector']],
    ['high-level stop lamp', ['high-stop-lamp']],
    ['rear plate', ['rear-plate-lamp']],
    ['DRL', ['daytime-running-lamp']],
    ['reading lamp', ['reading-lamp']],
  ])('`%s` are %j', (words, names) => {
    expect(functionsIn(words)).toEqual(names)
  })
})
