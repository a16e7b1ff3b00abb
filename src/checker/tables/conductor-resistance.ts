/** Maximum resistance of a conductor at 20 °C in Ω/km by its nominal section in mm², plain copper, flexible (class 5). */
export const flexibleCopper: Readonly<Record<string, number>> = {
  '0.5': 39,
  '0.75': 26,
  '1': 19.5,
  '1.5': 13.3,
  '2.5': 7.98,
  '4': 4.95,
  '6': 3.3,
  '10': 1.91,
  '16': 1.21,
  '25': 0.78,
  '35': 0.554,
  '50': 0.386,
  '70': 0.272,
  '95': 0.206,
  '120': 0.161,
} // IEC 60228:2004, table 3, as tabulated publicly

export const flexibleCopperSource = 'IEC 60228, class 5, plain copper, the maximum at 20 °C'

/** Resistance in Ω/km of 1 mm² of annealed copper at 20 °C: 17.241 nΩ·m. */
export const annealedCopper = 17.241 // IEC 60028, 100 % IACS

/** What the table's rows are above that at most, up to 50 mm²: strands are drawn thinner, lie longer and are allowed a tolerance. */
export const strandingAllowance = 1.16 // 1.157 at 1.5 and 2.5 mm², rounded up

/** Change of the resistance of copper for each kelvin from 20 °C. */
export const copperCoefficient = 0.00393 // 1/K, 1/(234.5 + 20), AC 43.13-1B, 11-66

/** Sizes of cable that a merchant has, by the unit in which they are written: the table's sections, and the even gauges. */
export const cableSizes: Readonly<Record<string, readonly string[]>> = {
  mm2: Object.keys(flexibleCopper).map(section => `${section} mm²`),
  AWG: ['20', '18', '16', '14', '12', '10', '8', '6', '4', '2', '1', '1/0', '2/0', '3/0', '4/0'].map(
    gauge => `${gauge} AWG`,
  ),
} // IEC 60228:2004; 33 CFR 183.425, table 5
