import { createHash } from 'node:crypto'

/** A UUID that is made of a name within a namespace, the same for ever (version 5, RFC 9562 section 5.5). */
export function nameUuid(namespace: string, name: string): string {
  const space = Buffer.from(namespace.replaceAll('-', ''), 'hex')
  const bytes = createHash('sha1').update(space).update(name, 'utf8').digest().subarray(0, 16)
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x50 // version 5
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80 // variant of RFC 9562
  const hex = bytes.toString('hex')
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-')
}
