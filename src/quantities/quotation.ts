import { isWordPart } from './characters.ts'

const opensAfter = /[\s([{–—]/
const lookAhead = 200

/** Keeps count, from left to right, of the quotation marks that stand open in a text, so that `"9"` is not nine inches. */
export class Quotation {
  private readonly text: string
  /** Starts and ends of the quantities passed; the marks between them are looked at only once a mark asks. */
  private readonly passed: number[] = []
  private counted = 0
  private seen = 0
  private isDoubleOpen = false
  private isSingleOpen = false

  constructor(text: string) {
    this.text = text
  }

  private take(at: number): void {
    const mark = this.text[at]
    const before = this.text[at - 1] ?? ' '
    const isOpening = opensAfter.test(before) && !/^\s?$/.test(this.text[at + 1] ?? '')
    if (mark === '“') this.isDoubleOpen = true
    else if (mark === '”') this.isDoubleOpen = false
    else if (mark === '"') this.isDoubleOpen = this.isDoubleOpen ? false : isOpening
    else if (mark === '‘') this.isSingleOpen = true
    else if (mark === "'" || mark === '’') {
      const closes = this.isSingleOpen && !isWordPart(this.text.charCodeAt(at + 1))
      this.isSingleOpen = closes ? false : this.isSingleOpen || (mark === "'" && isOpening)
    }
  }

  /** Passes over a quantity, whose inch and foot marks are no quotation marks. */
  pass(start: number, end: number): void {
    this.passed.push(start, end)
  }

  private catchUp(): void {
    for (; this.counted < this.passed.length; this.counted += 2) {
      this.readTo(this.passed[this.counted] ?? 0)
      this.seen = Math.max(this.seen, this.passed[this.counted + 1] ?? 0)
    }
  }

  private readTo(end: number): void {
    for (; this.seen < end; this.seen += 1) {
      const code = this.text.charCodeAt(this.seen)
      if (code === 34 || code === 39 || (code >= 0x2018 && code <= 0x201d)) this.take(this.seen)
    }
  }

  /** Whether the quotation is closed further on, by a mark that is no inch or foot mark itself. */
  private closesLater(mark: number, pattern: RegExp): boolean {
    for (let at = mark + 1; at < mark + lookAhead && at < this.text.length; at += 1) {
      const before = this.text[at - 1] ?? ' '
      if (!pattern.test(this.text[at] ?? '') || /[\d½¼¾⅛⅜⅝⅞]/.test(before)) continue
      return !opensAfter.test(before) && !isWordPart(this.text.charCodeAt(at + 1))
    }
    return false
  }

  /** Whether the mark behind a number closes a quotation, rather than standing for inches or feet. */
  isClosedBy(mark: number, numberStart: number): boolean {
    this.catchUp()
    this.readTo(numberStart)
    const before = this.text[numberStart - 1] ?? ''
    const isDouble = /["”″]/.test(this.text[mark] ?? '')
    if (this.text[mark] === '″' || this.text[mark] === '′') return false
    if (isDouble ? /["“]/.test(before) : /['‘]/.test(before)) return true
    const isOpen = isDouble ? this.isDoubleOpen : this.isSingleOpen
    return isOpen && !this.closesLater(mark, isDouble ? /["”]/ : /['’]/)
  }
}
