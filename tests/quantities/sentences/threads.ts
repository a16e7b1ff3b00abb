import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['Tapped M8 × 1.25 for the stud.', 'M8 × 1.25 = 8 pitch 1.25 thread'],
  ['Tapped M8 for the stud.', 'M8 = 8 thread'],
  ['Tapped M12x1.5 for the sensor.', 'M12x1.5 = 12 pitch 1.5 thread'],
  ['An M6 x 20 screw holds it.', 'M6 = 6 thread | 20 = 20 mm'],
  ['Ordered M10 x 1.5 x 45 set screws.', 'M10 x 1.5 = 10 pitch 1.5 thread | 45 = 45 mm'],
  ['It takes 4 × M6 studs.', 'M6 = 6 thread'],
  ['It takes 4 x M6 x 20 screws.', 'M6 = 6 thread | 20 = 20 mm'],
  [
    'A 3/8 UNF bolt and a 1/2 BSP plug.',
    '3/8 UNF = 9.525 pitch 1.05833333 thread | 1/2 BSP = 20.955 pitch 1.81428571 thread',
  ],
  ['A 10-32 UNF screw.', '10-32 UNF = 4.826 pitch 0.79375 thread'],
  ['A 1/4"-20 UNC stud.', '1/4"-20 UNC = 6.35 pitch 1.27 thread'],
  ['A #8-32 UNC screw.', '#8-32 UNC = 4.1656 pitch 0.79375 thread'],
  ['Tapped it M12 × 1.75 in class 8.8.', 'M12 × 1.75 = 12 pitch 1.75 thread'],
  ['Class 8.8 M8 bolts hold the A2 M5 screws.', 'M8 = 8 thread | M5 = 5 thread'],
  ['The M8s are in, the M10 nuts are not.', 'M8 = 8 thread | M10 = 10 thread'],
  ['Fit an M6 x 12 mm cap head.', 'M6 = 6 thread | 12 mm = 12 mm'],
  ['Hung it on M2.5 posts.', 'M2.5 = 2.5 thread'],
  ['Loctite on the M6s and the M8 bolts.', 'M6 = 6 thread | M8 = 8 thread'],
  [
    'G 3/4, 3/8 BSPT and 5/16 UNC ends.',
    'G 3/4 = 26.441 pitch 1.81428571 thread | 3/8 BSPT = 16.662 pitch 1.33684211 thread | 5/16 UNC = 7.9375 pitch 1.41111111 thread',
  ],
  ['A 7/16 UNF x 1 in stud.', '7/16 UNF = 11.1125 pitch 1.27 thread | 1 in = 1 in'],
]
