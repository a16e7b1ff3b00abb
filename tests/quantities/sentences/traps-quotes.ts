import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['The end is marked "9".', 'nothing'],
  ['He said "it is 12 mm".', '12 mm = 12 mm'],
  ['The sign says "cut 9" long" here.', '9" = 9 in'],
  ['A 9" disc and a "12" key.', '9" = 9 in'],
  ["The tag reads ‘size 8’ and the plank is 5' long.", "5' = 5 ft"],
  ["A 70's radio.", 'nothing'],
  ['Of the 1500, 60 mm is scrap.', '60 mm = 60 mm'],
  ['In 2019, 12 mm was enough.', '12 mm = 12 mm'],
  ['Between the lines: 12 – and 14 mm more.', '14 mm = 14 mm'],
  ['The list: 3, 4 mm, 5.', '4 mm = 4 mm'],
  ['12 mm, 5 of them.', '12 mm = 12 mm'],
  ['Press “9” and hold.', 'nothing'],
]
