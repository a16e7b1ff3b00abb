/** A name as one folder: the same name always, another name never the same. */
export function folderName(name: string): string {
  const safe = name.replace(/[~/\\:*?"<>|\p{Cc}]/gu, found => `~${found.charCodeAt(0).toString(16).padStart(2, '0')}`)
  return /^(\.|index\.html$|$)|[. ]$/.test(safe) ? `~${safe}` : safe
}
