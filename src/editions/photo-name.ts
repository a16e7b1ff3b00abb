/** The last part of a photo's address, as one would compare it. */
export function photoName(address: string): string {
  const written =
    address
      .replace(/[?#].*$/, '')
      .split('/')
      .at(-1) ?? ''
  try {
    return decodeURIComponent(written).normalize('NFC').toLowerCase()
  } catch {
    return written.normalize('NFC').toLowerCase()
  }
}
