/** Ratings by other tables than ours, shown beside an answer; they move none. */

/** A of copper building wire in free air at 30 °C, insulation of 60, 75 and 90 °C: Lessons In Electric Circuits, DC 12. */
export const freeAir: readonly (readonly [gauge: string, at60: number, at75: number, at90: number])[] = [
  ['14', 25, 30, 35],
  ['12', 30, 35, 40],
  ['10', 40, 50, 55],
  ['8', 60, 70, 80],
  ['6', 80, 95, 105],
  ['4', 105, 125, 140],
  ['2', 140, 170, 190],
  ['1/0', 195, 230, 260],
  ['4/0', 300, 360, 405],
]

/** A of a second merchant's PVC cable by its section in mm², conditions not printed. */
export const secondMaker: readonly (readonly [section: number, amperes: number])[] = [
  [1.13, 20],
  [1.84, 28],
  [2.9, 37],
  [4.59, 48],
] // a merchant's data sheet of cable for cars, boats and batteries
