import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['Turned it to 12 mm ± 0.5 and stopped.', '12 mm ± 0.5 = 12 +0.5/-0.5 mm'],
  ['Turned it to 12 ± 0.5 mm and stopped.', '12 ± 0.5 mm = 12 +0.5/-0.5 mm'],
  ['The bore is 12 mm +0/-1.', '12 mm +0/-1 = 12 +0/-1 mm'],
  ['The bore is 30 mm +0.1 -0.2 after honing.', '30 mm +0.1 -0.2 = 30 +0.1/-0.2 mm'],
  ['The bore is 30 +0.1/-0.2 mm after honing.', '30 +0.1/-0.2 mm = 30 +0.1/-0.2 mm'],
  ['The pin is 30 mm -0/+1.', '30 mm -0/+1 = 30 +1/-0 mm'],
  ['The post is 12 mm give or take 1 mm.', '12 mm give or take 1 mm = 12 +1/-1 mm'],
  ['The post is 300 mm, give or take a millimetre.', '300 mm, give or take a millimetre = 300 +1/-1 mm'],
  ['The resistor is 100 Ω ± 5 %.', '100 Ω ± 5 % = 100 +5/-5 Ohm'],
  ['The lugs line up, 50 mm to within 1 mm.', '50 mm to within 1 mm = 50 +1/-1 mm'],
  ['The sheet is 1.2 m ± 5 mm.', '1.2 m ± 5 mm = 1.2 +0.005/-0.005 m'],
  ['The stud is 3 in ± 1/16.', '3 in ± 1/16 = 3 +0.0625/-0.0625 in'],
  ['The slot is 12 mm plus or minus half a millimetre.', '12 mm plus or minus half a millimetre = 12 +0.5/-0.5 mm'],
  ['Hold it at 20 °C ± 2 °C.', '20 °C ± 2 °C = 20 +2/-2 degC'],
  ['Hold it at 20 °C ± 2 K.', '20 °C ± 2 K = 20 +2/-2 degC'],
  ['The vee is 90° ± 0.5°.', '90° ± 0.5° = 90 +0.5/-0.5 deg'],
  ['Runs at 5 V, +12 V or -12 V.', '5 V = 5 V | +12 V = 12 V | -12 V = -12 V'],
  ['It is 300 mm give or take.', '300 mm give or take = ~300 mm'],
  [
    'The stroke is about two metres, give or take an inch.',
    'about two metres, give or take an inch = ~2 +0.0254/-0.0254 m',
  ],
  ['The shaft is 25 mm +/- 0.05 mm.', '25 mm +/- 0.05 mm = 25 +0.05/-0.05 mm'],
]
