const smallestDiameter = 0.127e-3 // m, of gauge 36 (ASTM B258)
const ratioOfDiameters = 92 // gauge 4/0 to gauge 36, in 39 steps (ASTM B258)

/** A gauge's number: 12 for `12`, 0 for `1/0` and `0`, -3 for `4/0` and `0000`; null for anything else. */
export function gaugeNumber(written: string): number | null {
  const slashed = /^([1-9])\/0$/.exec(written)
  if (slashed !== null) return 1 - Number(slashed[1])
  if (/^0{2,4}$/.test(written)) return 1 - written.length
  return /^\d{1,2}$/.test(written) ? Number(written) : null
}

/** The diameter of a solid wire of a gauge in metres, by the definition of ASTM B258. */
export function awgDiameter(gauge: number): number {
  return smallestDiameter * ratioOfDiameters ** ((36 - gauge) / 39)
}

/** The area of a conductor of a gauge in square metres, by the definition of ASTM B258. */
export function awgArea(gauge: number): number {
  return (Math.PI / 4) * awgDiameter(gauge) ** 2
}

/** The gauge, whole or not, whose area in square metres is given. */
export function awgOfArea(area: number): number {
  const diameter = Math.sqrt((4 * area) / Math.PI)
  return 36 - (39 * Math.log(diameter / smallestDiameter)) / Math.log(ratioOfDiameters)
}
