import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['The strap is 12,5 mm thick.', '12,5 mm = 12.5 mm', 'comma'],
  ['The strap is 12.5 mm thick.', '12.5 mm ?? decimal-mark', 'comma'],
  ['The rail is 1.260 mm long, give or take 0,5 mm.', '1.260 mm = 1260 mm | 0,5 mm = 0.5 mm', 'comma'],
  ['Paid €1.260,50 for it.', '€1.260,50 = 1260.5 money:EUR', 'comma'],
  ['A plate 3,5 x 4,5 mm.', '3,5 = 3.5 mm #1 in "3,5 x 4,5 mm" | 4,5 mm = 4.5 mm #1 in "3,5 x 4,5 mm"', 'comma'],
  ['Turned to 12,5 ± 0,5 mm.', '12,5 ± 0,5 mm = 12.5 +0.5/-0.5 mm', 'comma'],
  ['Holes at 45, 60 and 75,5 mm.', '45 = 45 mm | 60 = 60 mm | 75,5 mm = 75.5 mm', 'comma'],
  ['The strap is 12,5 mm thick.', '12,5 mm ?? decimal-mark'],
  ['Paid €12,50 for it.', '€12,50 ?? decimal-mark'],
  ['The rail is 1,385.5 mm long.', '1,385.5 mm = 1385.5 mm'],
  ['The gap is 0,5 mm.', '0,5 mm ?? decimal-mark'],
]
