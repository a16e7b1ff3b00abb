/** Tables of FAA AC 43.13-1B, change 1, by gauge. They are shown beside an answer and move none: other conditions than ours. */

/** Table 11-3: the breaker and the fuse in A that protect a wire; null where the page prints none. */
export const aircraftProtection: readonly (readonly [gauge: string, breaker: number | null, fuse: number])[] = [
  ['22', 5, 5],
  ['20', 7.5, 5],
  ['18', 10, 10],
  ['16', 15, 10],
  ['14', 20, 15],
  ['12', 30, 20],
  ['10', 40, 30],
  ['8', 50, 50],
  ['6', 80, 70],
  ['4', 100, 70],
  ['2', 125, 100],
  ['1', null, 150],
  ['1/0', null, 150],
]

/** Table 11-9: A in a bundle by the wire's rating of 105, 150 and 200 °C. */
export const aircraftBundle: readonly (readonly [gauge: string, at105: number, at150: number, at200: number])[] = [
  ['24', 2.5, 4, 5],
  ['22', 3, 5, 6],
  ['20', 4, 7, 9],
  ['18', 6, 9, 12],
  ['16', 7, 11, 14],
  ['14', 10, 14, 18],
  ['12', 13, 19, 25],
  ['10', 17, 26, 32],
  ['8', 38, 57, 71],
  ['6', 50, 76, 97],
  ['4', 68, 103, 133],
  ['2', 95, 141, 179],
  ['1', 113, 166, 210],
  ['1/0', 128, 192, 243],
  ['2/0', 147, 222, 285],
  ['3/0', 172, 262, 335],
  ['4/0', 204, 310, 395],
]

/** What table 11-9 holds for, in its own terms. */
export const aircraftConditions =
  '70 °C around, a bundle of 33 wires or more (9 of 8 AWG and thicker), a fifth of it loaded, 60 000 ft'

/** Table 11-9: Ω of each 1000 ft at 20 °C, tin-plated strands. */
export const aircraftOhms: Readonly<Record<string, number>> = {
  '24': 28.4,
  '22': 16.2,
  '20': 9.88,
  '18': 6.23,
  '16': 4.81,
  '14': 3.06,
  '12': 2.02,
  '10': 1.26,
  '8': 0.7,
  '6': 0.44,
  '4': 0.28,
  '2': 0.18,
  '1': 0.15,
  '1/0': 0.12,
  '2/0': 0.09,
  '3/0': 0.07,
  '4/0': 0.06,
}
