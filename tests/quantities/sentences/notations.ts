import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['Leave 20+ mm of thread.', '20+ mm = 20 mm min'],
  ['Leave 20+mm, and 5+ kg of ballast.', '20+mm = 20 mm min | 5+ kg = 5 kg min'],
  ['Leave 30 mm+ of thread behind the 12 V+ post.', '30 mm+ = 30 mm min | 12 V = 12 V'],
  ['Sold for £85+ VAT, and £85+VAT.', '£85 = 85 money:GBP | £85 = 85 money:GBP'],
  ['The probe reads negative 5 V.', 'negative 5 V = -5 V'],
  ['The camber is negative two degrees.', 'negative two degrees = -2 deg'],
  ['Moved the negative 12 V post.', '12 V = 12 V'],
  [
    'The pin is 12.34(3) mm, the bush 12.40(12) mm.',
    '12.34(3) mm = 12.34 +0.03/-0.03 mm | 12.40(12) mm = 12.4 +0.12/-0.12 mm',
  ],
  ['Fitted 12(3) mm of it.', 'nothing'],
  ['The lead is #12 AWG.', '12 AWG = 12 AWG'],
  ['The link is 00 AWG, the strap AWG 000.', '00 AWG = 00 AWG | AWG 000 = 000 AWG'],
  ['The link is 00 mm.', 'nothing'],
  ['The lead is 12 gauge wire, the tail 14-ga wire.', '12 gauge ?? ambiguous-unit | 14-ga ?? ambiguous-unit'],
  [
    'The tray is 400 long x 300 wide mm.',
    '400 = 400 mm #1 in "400 long x 300 wide mm" | 300 wide mm = 300 mm #1 in "400 long x 300 wide mm"',
  ],
  [
    'The slot is 40mm wide x 30mm deep.',
    '40mm = 40 mm #1 in "40mm wide x 30mm" | 30mm = 30 mm #1 in "40mm wide x 30mm"',
  ],
  [
    'The bin is 40 mm wide by 30 mm deep by 2 m long.',
    '40 mm = 40 mm #1 in "40 mm wide by 30 mm deep by 2 m" | 30 mm = 30 mm #1 in "40 mm wide by 30 mm deep by 2 m" | 2 m = 2 m #1 in "40 mm wide by 30 mm deep by 2 m"',
  ],
  ['The rail is 40 mm wide and 30 mm deep.', '40 mm = 40 mm | 30 mm = 30 mm'],
  ['The flat is 50 mm x 3.', '50 mm = 50 mm #1 in "50 mm x 3" | 3 = 3 mm #1 in "50 mm x 3"'],
  ['Cut it from 50 mm x 3 flat.', '50 mm = 50 mm #1 in "50 mm x 3" | 3 = 3 mm #1 in "50 mm x 3"'],
  [
    'The lid is 50 mm x 25 x 3.',
    '50 mm = 50 mm #1 in "50 mm x 25 x 3" | 25 = 25 mm #1 in "50 mm x 25 x 3" | 3 = 3 mm #1 in "50 mm x 25 x 3"',
  ],
  ['Drilled 8 mm x 4, and ordered 20 A x 3.', '8 mm = 8 mm | 20 A = 20 A'],
  ['The bolt is 3/8-16.', 'nothing'],
  ["The rail is 1'200 mm, the floor 1’450 mm.", "1'200 mm = 1200 mm | 1’450 mm = 1450 mm"],
  ['The feed is 2.5 mm<sup>2</sup>.', '2.5 mm<sup>2</sup> = 2.5 mm2'],
  ['It was pumped up to 35 psi and tightened it up to 40 Nm.', '35 psi = 35 psi | 40 Nm = 40 Nm'],
  ['It lifts up to 500 kg, good for up to 2 bar.', 'up to 500 kg = 500 kg max | up to 2 bar = 2 bar max'],
  ['The box holds 4.5 dm³, the field 2 km².', '4.5 dm³ = 4.5 dm3 | 2 km² = 2 km2'],
  ['Marked 600 L × 400 W on the lid.', 'nothing'],
]
