import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['61K on the clock, and 61 K on the clock.', 'nothing'],
  ['Five V6s, 2 V belts and 2 V-belts.', 'nothing'],
  ['Three C clamps, 3 C clamps and a G clamp.', 'nothing'],
  ['Welded 2 A-frames and a 2 L bracket.', 'nothing'],
  ['The 3000K bulb.', 'nothing'],
  ['It is type 2 and size 10.', 'nothing'],
  ['He rang at 5 am.', 'nothing'],
  ['Order 12 A4 sheets.', 'nothing'],
  ['Pin 3A, table 2B.', 'nothing'],
  ['A 24V/5A supply.', '24V = 24 V | 5A = 5 A'],
  ['Wired it 5 a side.', 'nothing'],
  ['Stage 3 K-factor.', 'nothing'],
]
