import { DraftTrouble } from './draft-trouble.ts'

/** The text of a file in UTF-8 without its byte order mark, lines ended by one sign. */
export function decodeDraft(bytes: Uint8Array, file: string): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    throw new DraftTrouble(`\`${file}\` is UTF-16, expected UTF-8: save it as UTF-8.`)
  if (bytes.includes(0)) throw new DraftTrouble(`\`${file}\` is no text: it holds bytes that text has not.`)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes).replace(/\r\n?/g, '\n')
  } catch {
    const shown = new TextDecoder('utf-8').decode(bytes)
    const line = shown.slice(0, shown.indexOf('\ufffd')).split(/\r\n|\r|\n/).length
    throw new DraftTrouble(
      `\`${file}\` has bytes on line ${line} that are not UTF-8: save it as UTF-8, so that no letter is lost.`,
    )
  }
}
