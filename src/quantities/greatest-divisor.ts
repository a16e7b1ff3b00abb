const largestExact = 2n ** 53n

/** The greatest common divisor of two whole numbers that floats hold exactly, the second not negative. */
export function smallDivisor(a: number, b: number): number {
  let [x, y] = [a < 0 ? -a : a, b]
  while (y !== 0) {
    const rest = x % y
    x = y
    y = rest
  }
  return x
}

/** The greatest common divisor of two whole numbers of any size, the second not negative. */
export function greatestDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b]
  if (x <= largestExact && y <= largestExact) return BigInt(smallDivisor(Number(x), Number(y)))
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}
