/** Current in A that one cable carries at 30 °C, by its section in mm²: thin-wall PVC, 105 °C, nominal, in free air. */
export const thinWall: readonly (readonly [section: number, amperes: number])[] = [
  [0.5, 11],
  [0.75, 14],
  [1, 16.5],
  [1.5, 21],
  [2, 25],
  [2.5, 29],
  [3, 33],
  [4, 39],
  [4.5, 42],
  [6, 50],
  [8.5, 63],
  [10, 70],
] // makers' data sheets of ISO 6722 class B cable

export const thinWallSource = "makers' data sheets of ISO 6722 class B thin-wall cable, 105 °C, one cable at 30 °C"

/** Insulation temperatures in °C of the columns of `gaugeRows`. */
export const gaugeColumns = [60, 75, 80, 90, 105, 125, 200] as const

/** Current in A that one conductor carries at 30 °C, below 50 V, by its gauge and its insulation. */
export const gaugeRows: readonly (readonly [gauge: string, ...amperes: number[]])[] = [
  ['18', 10, 10, 15, 20, 20, 25, 25],
  ['16', 15, 15, 20, 25, 25, 30, 35],
  ['14', 20, 20, 25, 30, 35, 40, 45],
  ['12', 25, 25, 35, 40, 45, 50, 55],
  ['10', 40, 40, 50, 55, 60, 70, 70],
  ['8', 55, 65, 70, 70, 80, 90, 100],
  ['6', 80, 95, 100, 100, 120, 125, 135],
  ['4', 105, 125, 130, 135, 160, 170, 180],
  ['3', 120, 145, 150, 155, 180, 195, 210],
  ['2', 140, 170, 175, 180, 210, 225, 240],
  ['1', 165, 195, 210, 210, 245, 265, 280],
  ['1/0', 195, 230, 245, 245, 285, 305, 325],
  ['2/0', 225, 265, 285, 285, 330, 355, 370],
  ['3/0', 260, 310, 330, 330, 385, 410, 430],
  ['4/0', 300, 360, 385, 385, 445, 475, 510],
] // 33 CFR 183.425, table 5

export const gaugeSource = '33 CFR 183.425, table 5, one conductor at 30 °C'

/** Share of its rating that each of so many loaded cables in one loom carries. */
export const groupingFactors: readonly (readonly [from: number, factor: number])[] = [
  [25, 0.4],
  [7, 0.5],
  [4, 0.6],
  [3, 0.7],
  [1, 1],
] // 33 CFR 183.425, table 5, note 2; below 50 V it is prudent practice, not law (183.435(b))

export const groupingSource = '33 CFR 183.425, table 5, note 2; below 50 V prudent practice, not law'
