import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['On 7 May 2026, on 2026-03-07 and on 07.03.2026.', 'nothing'],
  ['On 7/3/2026 at 10:45.', 'nothing'],
  ['At 5 am, at 5 p.m. and at 10.45 am.', 'nothing'],
  ['Started at 1400 hrs, ended at 0830 h.', 'nothing'],
  ['Built in the 1980s, sold in the 90s.', 'nothing'],
  ['At five minutes past three.', 'nothing'],
  ['At ten minutes to five.', 'nothing'],
  ['One day it will run.', 'nothing'],
  ['In a second, or in a minute.', 'nothing'],
  ['Called 01632 960 123 twice.', 'nothing'],
  ['Since 1967 and in 2023.', 'nothing'],
  ['It took half past ten to quarter to three.', 'nothing'],
  ['Week 12, session 4, job 7.', 'nothing'],
  ['At 12.30 we stopped.', 'nothing'],
]
