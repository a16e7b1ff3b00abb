/** The text of a file without its byte order mark, or the sentence that says why it is none. */
export function decodeText(bytes: Uint8Array): { text: string; fault: null } | { text: null; fault: string } {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return { text: null, fault: 'Unexpected UTF-16 text, expected UTF-8: save the file as UTF-8.' }
  if (bytes.includes(0)) return { text: null, fault: 'Unexpected binary file, expected text in UTF-8.' }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), fault: null }
  } catch {
    return { text: null, fault: `${atFirstBadByte(bytes)}, expected UTF-8: save the file as UTF-8.` }
  }
}

/** Names the line, so that the one odd letter of an old encoding can be found. */
function atFirstBadByte(bytes: Uint8Array): string {
  const shown = new TextDecoder('utf-8').decode(bytes)
  const line = shown.slice(0, shown.indexOf('\ufffd')).split('\n').length
  return `Unexpected bytes on line ${line} that are not text`
}
