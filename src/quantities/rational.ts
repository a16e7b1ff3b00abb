const largestExact = 2n ** 53n
const bitsKept = 66n

function smallDivisor(a: number, b: number): bigint {
  let [x, y] = [a, b]
  while (y !== 0) [x, y] = [y, x % y]
  return BigInt(x)
}

function greatestDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b]
  if (x <= largestExact && y <= largestExact) return smallDivisor(Number(x), Number(y))
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}

function bitLength(value: bigint): bigint {
  return BigInt(value.toString(16).length) * 4n
}

/** An exact fraction in lowest terms, its bottom positive. */
export class Rational {
  static readonly zero = new Rational(0n, 1n)
  static readonly one = new Rational(1n, 1n)
  readonly top: bigint
  readonly bottom: bigint

  private constructor(top: bigint, bottom: bigint) {
    this.top = top
    this.bottom = bottom
  }

  /** The fraction top/bottom; a bottom of zero is a fault of the caller. */
  static of(top: bigint | number, bottom: bigint | number = 1n): Rational {
    const [t, b] = [BigInt(top), BigInt(bottom)]
    if (b === 0n) throw new RangeError(`Unexpected bottom 0 in the fraction ${t}/0, expected another whole number`)
    if (b === 1n) return new Rational(t, b)
    const divisor = greatestDivisor(t, b < 0n ? -b : b)
    const sign = b < 0n ? -1n : 1n
    return new Rational((sign * t) / divisor, (sign * b) / divisor)
  }

  /** Reads `59/8`, `-12.5` or `7`; null for anything else. */
  static parse(text: string): Rational | null {
    const match = /^(-?)(\d{1,400})(?:\.(\d{1,400})|\/(\d{1,400}))?$/.exec(text)
    if (match === null) return null
    const [, sign = '', whole = '', decimals = '', bottom = '1'] = match
    if (/^0+$/.test(bottom)) return null
    return Rational.of(
      BigInt(sign + whole + decimals),
      decimals === '' ? BigInt(bottom) : 10n ** BigInt(decimals.length),
    )
  }

  /** The number that a float stands for, without loss. */
  static fromNumber(value: number): Rational {
    let [top, bottom] = [value, 1n]
    while (!Number.isInteger(top)) [top, bottom] = [top * 2, bottom * 2n]
    return Rational.of(BigInt(top), bottom)
  }

  plus(other: Rational): Rational {
    return Rational.of(this.top * other.bottom + other.top * this.bottom, this.bottom * other.bottom)
  }

  minus(other: Rational): Rational {
    return this.plus(other.negated())
  }

  times(other: Rational): Rational {
    if (other.top === 1n && other.bottom === 1n) return this
    return Rational.of(this.top * other.top, this.bottom * other.bottom)
  }

  over(other: Rational): Rational {
    return Rational.of(this.top * other.bottom, this.bottom * other.top)
  }

  negated(): Rational {
    return Rational.of(-this.top, this.bottom)
  }

  absolute(): Rational {
    return this.top < 0n ? this.negated() : this
  }

  isZero(): boolean {
    return this.top === 0n
  }

  /** Negative, zero or positive as this is less than, equal to or greater than the other. */
  compare(other: Rational): number {
    const difference = this.top * other.bottom - other.top * this.bottom
    return difference < 0n ? -1 : difference > 0n ? 1 : 0
  }

  /** The nearest whole number, a half going away from zero. */
  roundHalfUp(): bigint {
    const doubled = (this.top < 0n ? -this.top : this.top) * 2n + this.bottom
    const rounded = doubled / (2n * this.bottom)
    return this.top < 0n ? -rounded : rounded
  }

  /** The nearest float. */
  toNumber(): number {
    const size = this.top < 0n ? -this.top : this.top
    if (size <= largestExact && this.bottom <= largestExact) return Number(this.top) / Number(this.bottom)
    const shift = bitLength(this.bottom) - bitLength(size) + bitsKept
    const scaled = shift > 0n ? size << shift : size
    const below = shift > 0n ? this.bottom : this.bottom << -shift
    // The last bit is set when something was cut off, so that halves round the right way.
    const quotient = (scaled / below) | (scaled % below === 0n ? 0n : 1n)
    // In two steps, since the power alone may be too small or too large for a float.
    const half = Math.trunc(-Number(shift) / 2)
    const number = Number(quotient) * 2 ** half * 2 ** (-Number(shift) - half)
    return this.top < 0n ? -number : number
  }

  /** `59/8`, or `7` for a whole number. */
  toString(): string {
    return this.bottom === 1n ? `${this.top}` : `${this.top}/${this.bottom}`
  }
}
