import { posix } from 'node:path'

/**
 * A picture's address as a path from `content/`: relative to the note, or `photos/…` from `content/`.
 * What leads out of `content/` keeps its `../`; an address with a scheme or a root stays as it is.
 */
export function photoPath(address: string, noteFile: string): string {
  const written = decoded(address.trim().replace(/[?#].*$/, ''))
  return written.startsWith('photos/') ? posix.normalize(written) : fromContent(written, noteFile)
}

/** The address of another note as a path from `content/`. */
export function notePath(address: string, noteFile: string): string {
  return fromContent(address.replace(/[?#].*$/, ''), noteFile)
}

function fromContent(written: string, noteFile: string): string {
  if (/^[a-z][a-z0-9+.-]*:/i.test(written) || written.startsWith('/')) return written
  return posix.relative('content', posix.join(posix.dirname(noteFile), written))
}

/** `%20` as a blank; text that is no such code stays. */
function decoded(address: string): string {
  try {
    return decodeURIComponent(address)
  } catch {
    return address
  }
}
