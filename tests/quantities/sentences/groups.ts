import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  [
    'The tank is 860 × 380 × 300 mm outside.',
    '860 = 860 mm #1 in "860 × 380 × 300 mm" | 380 = 380 mm #1 in "860 × 380 × 300 mm" | 300 mm = 300 mm #1 in "860 × 380 × 300 mm"',
  ],
  [
    'Welded it from 2" x 2" x 3/16" angle.',
    '2" = 2 in #1 in "2" x 2" x 3/16"" | 2" = 2 in #1 in "2" x 2" x 3/16"" | 3/16" = 0.1875 in #1 in "2" x 2" x 3/16""',
  ],
  ['A plate 900 x 140 mm covers the hole.', '900 = 900 mm #1 in "900 x 140 mm" | 140 mm = 140 mm #1 in "900 x 140 mm"'],
  [
    'The crate is 10 by 12 by 4 inches.',
    '10 = 10 in #1 in "10 by 12 by 4 inches" | 12 = 12 in #1 in "10 by 12 by 4 inches" | 4 inches = 4 in #1 in "10 by 12 by 4 inches"',
  ],
  [
    'Cut the gusset from 40x40x3 mm angle.',
    '40 = 40 mm #1 in "40x40x3 mm" | 40 = 40 mm #1 in "40x40x3 mm" | 3 mm = 3 mm #1 in "40x40x3 mm"',
  ],
  ['Two pads, 50mm x 50mm each.', '50mm = 50 mm #1 in "50mm x 50mm" | 50mm = 50 mm #1 in "50mm x 50mm"'],
  ['The board is 1.2 m x 600 mm.', '1.2 m = 1.2 m #1 in "1.2 m x 600 mm" | 600 mm = 600 mm #1 in "1.2 m x 600 mm"'],
  ['Folded a 10mmx20mm strip.', '10mm = 10 mm #1 in "10mmx20mm" | 20mm = 20 mm #1 in "10mmx20mm"'],
  ['The sheet is 8 ft by 4 ft.', '8 ft = 8 ft #1 in "8 ft by 4 ft" | 4 ft = 4 ft #1 in "8 ft by 4 ft"'],
  [
    'Bought flat bar, 40 x 3 and 50 x 5 mm.',
    '40 = 40 mm #1 in "40 x 3" | 3 = 3 mm #1 in "40 x 3" | 50 = 50 mm #2 in "50 x 5 mm" | 5 mm = 5 mm #2 in "50 x 5 mm"',
  ],
  ['The lid is about 40 x 30 mm.', 'about 40 = ~40 mm #1 in "40 x 30 mm" | 30 mm = ~30 mm #1 in "40 x 30 mm"'],
  ['The lid is 40 x 30 mm or so.', '40 = ~40 mm #1 in "40 x 30 mm" | 30 mm or so = ~30 mm #1 in "40 x 30 mm"'],
  ['The window is 6 in by 4 in.', '6 in = 6 in #1 in "6 in by 4 in" | 4 in = 4 in #1 in "6 in by 4 in"'],
  [
    'The shelf is six by four inches.',
    'six = 6 in #1 in "six by four inches" | four inches = 4 in #1 in "six by four inches"',
  ],
  [
    'The tank is 860 × 380 × 300 mm ± 2 mm.',
    '860 = 860 +2/-2 mm #1 in "860 × 380 × 300 mm ± 2 mm" | 380 = 380 +2/-2 mm #1 in "860 × 380 × 300 mm ± 2 mm" | 300 mm ± 2 mm = 300 +2/-2 mm #1 in "860 × 380 × 300 mm ± 2 mm"',
  ],
  ['Fitted 3 x 20 A fuses in the spare ways.', '20 A = 20 A'],
  ['Ran 2 x 2.5 mm² to the tail.', '2.5 mm² = 2.5 mm2'],
  ['Four lamps, 4 x 21 W in all.', '21 W = 21 W'],
  ['12 V × 5 A = 60 W, so the fan is in order.', '12 V = 12 V | 5 A = 5 A | 60 W = 60 W'],
  ['Drilled the mount 2 x 3 mm oversize.', '2 = 2 mm #1 in "2 x 3 mm" | 3 mm = 3 mm #1 in "2 x 3 mm"'],
  ['Cut 2 x 350 mm lengths for the hinge.', '350 mm = 350 mm'],
  ['Used 50 mm x 3 for the brace.', '50 mm = 50 mm'],
  ['Holes at 45 and 120 mm from the edge.', '45 = 45 mm | 120 mm = 120 mm'],
  ['Drilled at 10, 12 and 14 mm.', '10 = 10 mm | 12 = 12 mm | 14 mm = 14 mm'],
  ['Drill 10, 12 or 14 mm, whichever is sharp.', '10 = 10 mm | 12 = 12 mm | 14 mm = 14 mm'],
  ['The three steps are 45, 60, 75 mm.', '45 = 45 mm | 60 = 60 mm | 75 mm = 75 mm'],
  ['Spacers of two and three millimetres went in.', 'two = 2 mm | three millimetres = 3 mm'],
  [
    'A 60/55W bulb and a 21/5W one.',
    '60 = 60 W in "60/55W" | 55W = 55 W in "60/55W" | 21 = 21 W in "21/5W" | 5W = 5 W in "21/5W"',
  ],
  ['The switch is good for 12/24 V.', '12 = 12 V in "12/24 V" | 24 V = 24 V in "12/24 V"'],
  ['A 0.75/1.5 mm² butt splice joins them.', '0.75 = 0.75 mm2 in "0.75/1.5 mm²" | 1.5 mm² = 1.5 mm2 in "0.75/1.5 mm²"'],
  ['The spanner is 10/13 mm.', '10 = 10 mm in "10/13 mm" | 13 mm = 13 mm in "10/13 mm"'],
]
