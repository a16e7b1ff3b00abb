import type { Measurement } from '../record/record.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from './drawing.ts'
import type { PageScope } from './page-scope.ts'
import { wordsAddress } from './thing-addresses.ts'

const width = 168
const height = 44
const inset = 14

interface Reading {
  readonly measurement: Measurement
  readonly si: number
  readonly x: number
  readonly y: number
}

/** Readings of one thing over the sessions, each leading to its words; null where they cannot be compared. */
export function drawHistory(scope: PageScope, measurements: readonly Measurement[]): Drawing | null {
  const values = measurements.map(({ quantity }) => quantity.si)
  if (values.some(value => value === null)) return null
  const readings = place(
    measurements,
    values.filter(value => value !== null),
  )
  const line = readings.map(({ x, y }, index) => (index === 0 ? `M${x} ${y}` : `H${x}V${y}`)).join('')
  return {
    width,
    height,
    says: measurements.map(({ quantity, session }) => `${scope.balloon(session).says}: ${quantity.text}`).join('; '),
    look: 'hist',
    strokes: [
      path('path', `${line}H${width - 4}`),
      ...readings.map((reading, index) => point(scope, reading, index === readings.length - 1)),
    ],
  }
}

function place(measurements: readonly Measurement[], values: readonly number[]): Reading[] {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const span = high - low || 1
  return measurements.map((measurement, index) => ({
    measurement,
    si: values[index] ?? low,
    x: tenth(inset + (index / (measurements.length - 1)) * (width - 2 * inset - 8)),
    y: tenth(height - 12 - (((values[index] ?? low) - low) / span) * (height - 24)),
  }))
}

function point(scope: PageScope, { measurement, x, y }: Reading, isLast: boolean): Stroke {
  const { quantity, session } = measurement
  return {
    kind: 'link',
    href: scope.to(wordsAddress(measurement)),
    says: `${quantity.text}, ${scope.balloon(session).says}`,
    strokes: [
      { kind: 'circle', x, y, r: isLast ? 9 : 8, look: isLast ? 'bal now' : 'bal' },
      lettering(isLast ? 'bal-n now' : 'bal-n', { x, y }, scope.balloon(session).text),
    ],
  }
}
