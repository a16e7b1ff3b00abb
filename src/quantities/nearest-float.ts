const bitsKept = 66n

function bitLength(value: bigint): bigint {
  return BigInt(value.toString(16).length) * 4n
}

/** The float nearest to a fraction of two whole numbers of any size, the bottom positive. */
export function nearestFloat(top: bigint, bottom: bigint): number {
  const size = top < 0n ? -top : top
  const shift = bitLength(bottom) - bitLength(size) + bitsKept
  const scaled = shift > 0n ? size << shift : size
  const below = shift > 0n ? bottom : bottom << -shift
  // The last bit is set when something was cut off, so that halves round the right way.
  const quotient = (scaled / below) | (scaled % below === 0n ? 0n : 1n)
  // In two steps, since the power alone may be too small or too large for a float.
  const half = Math.trunc(-Number(shift) / 2)
  const number = Number(quotient) * 2 ** half * 2 ** (-Number(shift) - half)
  return top < 0n ? -number : number
}
