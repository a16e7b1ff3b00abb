import { expect, test } from 'vitest'
import boltLoad from '../../src/checks/bolt-load.ts'
import jointAngles from '../../src/checks/joint-angles.ts'
import speedometer from '../../src/checks/speedometer.ts'
import { limitParts } from '../../src/pages/working-limits.ts'
import { answerTo } from '../checks/answer-to.ts'

/** The first sentence under the heading of a limit. */
const limitOf = (...of: Parameters<typeof answerTo>): string => {
  const [, first] = limitParts(answerTo(...of))
  const texts = [...JSON.stringify(first).matchAll(/"text":"([^"]*)"/g)].map(([, text]) => text)
  return (texts.join('').split('. ')[0] ?? '').replaceAll(/[\u202f\u00a0]/g, ' ')
}

// ISO 898-1: M8 of class 8.8 has 36.6 mm² and 580 MPa, of which three quarters are 15 921 N. UN R39, 5.4: 48 km/h at 40 km/h.
test('a limit that is worked out stands with its figure', () => {
  const bolt = { 'bolt/load': '4.2 kN', 'bolt/stress-area': '36.6 mm²', 'bolt/proof-stress': '580 MPa' }
  expect(limitOf(boltLoad, { given: bolt })).toBe('75 % of the proof load, to which it is tightened, at most 15 920 N')
  const dial = { 'speedometer/indicated-speed': '41 km/h', 'speedometer/true-speed': '40 km/h' }
  expect(limitOf(speedometer, { given: dial })).toBe('0 km/h to a tenth of the true speed and 4 km/h, at most 8 km/h')
})

test('a limit whose words hold its figures has them once', () => {
  const shaft = { 'prop-shaft/front-angle': '2.0°', 'prop-shaft/rear-angle': '2.0°', 'prop-shaft/max-angle': '25°' }
  expect(limitOf(jointAngles, { given: shaft, aspect: 'front' })).toBe('0.5 ° to 25 °')
})
