import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['Bought 2 off, 3 no. and 4 each.', 'nothing'],
  ['Used no. 8 screws and No 10 washers.', 'nothing'],
  ['Sanded it with 120-grit, then P240.', 'nothing'],
  ['Gloves of size 10, shoes of size 9.', 'nothing'],
  ['The score was 3 to 4.', 'nothing'],
  ['Fitted four of 10.', 'nothing'],
  ['Needs 60 teeth and 24 holes.', 'nothing'],
  ['Ordered 100 washers and 20 or 30 nuts.', 'nothing'],
  ['Page 12 to 14 of the book.', 'nothing'],
  ['Counted 3/4 of them.', 'nothing'],
  ['The ratio is 16:1, the scale 1:50.', 'nothing'],
  ['It scored ± nothing, ±.', 'nothing'],
  ['Zero over zero is 0/0 in.', 'nothing'],
  ['Only 3/0 in and 5/0 V.', 'nothing'],
]
