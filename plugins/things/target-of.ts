import { type ThingTarget, thingSchemes } from './node.ts'

/** Where an address leads inside the record; null for any other address. */
export function targetOf(url: string): { thing: ThingTarget } | { note: string } | null {
  const [, before, rest] = /^([A-Za-z][A-Za-z0-9+.-]*):(.*)$/su.exec(url) ?? []
  if (before === undefined || rest === undefined) return noteOf(url)
  const scheme = thingSchemes.find(known => known === before.toLowerCase())
  return scheme === undefined ? null : { thing: { scheme, path: decoded(rest).trim() } }
}

/** A file of this folder or one beside it: no host, no root, no scheme. */
function noteOf(url: string): { note: string } | null {
  const [path] = url.split(/[?#]/u)
  return path !== undefined && /^[^/\\].*\.md$|^\.md$/isu.test(path) ? { note: decoded(path) } : null
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text // A lone `%` is itself.
  }
}
