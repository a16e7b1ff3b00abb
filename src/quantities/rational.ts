import { greatestDivisor, smallDivisor } from './greatest-divisor.ts'
import { nearestFloat } from './nearest-float.ts'

const isSafe = Number.isSafeInteger
const largestSafe = BigInt(Number.MAX_SAFE_INTEGER)

/** An exact fraction in lowest terms, its bottom positive. */
export class Rational {
  static readonly zero = new Rational(0, 1)
  static readonly one = new Rational(1, 1)
  // Both are numbers where a float holds both exactly, which is far quicker to reckon with, else both are bigints.
  private readonly above: number | bigint
  private readonly below: number | bigint

  private constructor(above: number | bigint, below: number | bigint) {
    this.above = above
    this.below = below
  }

  get top(): bigint {
    return BigInt(this.above)
  }
  get bottom(): bigint {
    return BigInt(this.below)
  }

  /** The fraction top/bottom; a bottom of zero is a fault of the caller. */
  static of(top: bigint | number, bottom: bigint | number = 1): Rational {
    if (typeof top === 'number' && typeof bottom === 'number' && isSafe(top) && isSafe(bottom) && bottom > 0)
      return Rational.reduced(top, bottom)
    const [t, b] = [BigInt(top), BigInt(bottom)]
    if (b === 0n) throw new RangeError(`Unexpected bottom 0 in the fraction ${t}/0, expected another whole number`)
    const divisor = b < 0n ? -greatestDivisor(t, -b) : greatestDivisor(t, b)
    const [above, below] = [t / divisor, b / divisor]
    const isSmall = above <= largestSafe && above >= -largestSafe && below <= largestSafe
    return isSmall ? new Rational(Number(above), Number(below)) : new Rational(above, below)
  }

  private static reduced(top: number, bottom: number): Rational {
    const divisor = bottom === 1 ? 1 : smallDivisor(top, bottom)
    // A zero is added because a float knows a negative one.
    return new Rational(top / divisor + 0, bottom / divisor)
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
    const one = this.crossed(other)
    const two = other.crossed(this)
    const bottom = typeof this.below === 'number' && typeof other.below === 'number' ? this.below * other.below : null
    if (one !== null && two !== null && bottom !== null && isSafe(one + two) && isSafe(bottom))
      return Rational.reduced(one + two, bottom)
    return Rational.of(this.top * other.bottom + other.top * this.bottom, this.bottom * other.bottom)
  }

  /** The top over the bottoms of both, as far as a float holds it. */
  private crossed(other: Rational): number | null {
    const product = typeof this.above === 'number' && typeof other.below === 'number' ? this.above * other.below : null
    return product !== null && isSafe(product) ? product : null
  }

  minus(other: Rational): Rational {
    return this.plus(other.negated())
  }

  times(other: Rational): Rational {
    if (other.above === 1 && other.below === 1) return this
    const { above, below } = this
    if (typeof above === 'number' && typeof below === 'number' && typeof other.above === 'number') {
      const top = above * other.above
      const bottom = below * Number(other.below)
      if (isSafe(top) && isSafe(bottom)) return Rational.reduced(top, bottom)
    }
    return Rational.of(this.top * other.top, this.bottom * other.bottom)
  }

  /** The float nearest to the product, without reducing it first where that makes no difference. */
  productAsNumber(other: Rational): number {
    const { above, below } = this
    if (typeof above === 'number' && typeof below === 'number' && typeof other.above === 'number') {
      const top = above * other.above
      const bottom = below * Number(other.below)
      if (isSafe(top) && isSafe(bottom)) return (top + 0) / bottom
    }
    return this.times(other).toNumber()
  }

  over(other: Rational): Rational {
    return Rational.of(this.top * other.bottom, this.bottom * other.top)
  }

  negated(): Rational {
    return typeof this.above === 'number'
      ? new Rational(0 - this.above, this.below)
      : Rational.of(-this.top, this.bottom)
  }

  absolute(): Rational {
    return this.above < 0 ? this.negated() : this
  }

  isZero(): boolean {
    return this.above === 0
  }

  /** Negative, zero or positive as this is less than, equal to or greater than the other. */
  compare(other: Rational): number {
    const one = this.crossed(other)
    const two = other.crossed(this)
    if (one !== null && two !== null) return Math.sign(one - two)
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
    if (typeof this.above === 'number' && typeof this.below === 'number') return this.above / this.below
    return nearestFloat(this.top, this.bottom)
  }

  /** `59/8`, or `7` for a whole number. */
  toString(): string {
    return this.below === 1 || this.below === 1n ? `${this.above}` : `${this.above}/${this.below}`
  }
}
