import { DraftTrouble } from './draft-trouble.ts'

export interface DecodedDraft {
  /** Without a byte order mark, lines ended by one sign. */
  readonly text: string
  /** What the builder should know of how it was read; null where nothing was assumed. */
  readonly remark: string | null
}

/** The text of a file: UTF-8, UTF-16 that says so in its first bytes, or else what older programs on Windows write. */
export function decodeDraft(bytes: Uint8Array, file: string): DecodedDraft {
  const wide = wideCode(bytes)
  if (wide !== null) return { text: lined(new TextDecoder(wide).decode(bytes)), remark: null }
  if (bytes.includes(0))
    throw new DraftTrouble(`\`${file}\` is no text: it holds bytes that text has not. Save it as CSV in UTF-8.`)
  try {
    return { text: lined(new TextDecoder('utf-8', { fatal: true }).decode(bytes)), remark: null }
  } catch {
    if (bytes.some(byte => unused.includes(byte)))
      throw new DraftTrouble(
        `\`${file}\` has bytes on line ${lineOfFault(bytes)} that are neither UTF-8 nor Windows-1252: save it as UTF-8, so that no letter is lost.`,
      )
    return { text: lined(decodeOld(bytes)), remark: oldCode }
  }
}

const upper = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ' // bytes 0x80 to 0x9f of Windows-1252 (WHATWG Encoding)

/** Windows-1252 is Latin-1 but for these; the decoder of some releases of Node takes it for Latin-1 altogether. */
const decodeOld = (bytes: Uint8Array): string =>
  Buffer.from(bytes)
    .toString('latin1')
    .replace(/[\u0080-\u009f]/g, sign => upper[sign.charCodeAt(0) - 0x80] ?? sign)

const unused: readonly number[] = [0x81, 0x8d, 0x8f, 0x90, 0x9d] // bytes to which Windows-1252 gives no letter (WHATWG Encoding)
const oldCode =
  'The file is not UTF-8, so it was read as Windows-1252: look whether its accents and its signs of money are right.'

/** UTF-16 by its byte order mark. */
function wideCode([first, second]: Uint8Array): string | null {
  if (first === 0xff && second === 0xfe) return 'utf-16le'
  return first === 0xfe && second === 0xff ? 'utf-16be' : null
}

const lined = (text: string): string => text.replace(/\r\n?/g, '\n')

function lineOfFault(bytes: Uint8Array): number {
  const shown = new TextDecoder('utf-8').decode(bytes)
  return shown.slice(0, shown.indexOf('\ufffd')).split(/\r\n|\r|\n/).length
}
