/** Characters that XML 1.0 may not hold become U+FFFD. */
export function legalXml(text: string): string {
  return text.replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '\ufffd')
}

/** Words as XML holds them. */
export function escapeXml(text: string): string {
  return legalXml(text).replace(/[&<>"']/g, found => `&#${found.charCodeAt(0)};`)
}
