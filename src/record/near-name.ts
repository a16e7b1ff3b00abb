import { isNear, nearest } from '../facts/near-words.ts'
import { compareText } from './order-sessions.ts'

/** The first declared name, by code unit, that is near to the one written. */
export function nearName(written: string, declared: Iterable<string>): string | null {
  let near: string | null = null
  for (const name of declared) {
    if (Math.abs(name.length - written.length) > 1 || !isNear(written, name)) continue
    if (near === null || compareText(name, near) < 0) near = name
  }
  return near
}

/** What was most likely meant by a name that leads nowhere. */
export function likelyName(written: string, declared: Iterable<string>): string | null {
  return nearest(written, [...declared].sort(compareText))
}
