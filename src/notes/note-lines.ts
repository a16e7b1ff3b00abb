/** A line of a note without its line end; `next` is where the line after it begins. */
export interface Line {
  readonly start: number
  readonly text: string
  readonly next: number
}

export function linesOf(text: string): Line[] {
  const lines: Line[] = []
  for (let start = 0; start < text.length; ) {
    const end = text.indexOf('\n', start)
    const next = end === -1 ? text.length : end + 1
    lines.push({ start, text: text.slice(start, next).replace(/\r?\n$/, ''), next })
    start = next
  }
  return lines
}

/** `---` alone, blanks after it allowed. */
export function isFence(line: string): boolean {
  return /^---[ \t]*$/.test(line)
}

/** What a phone or a slip makes of `---`: two or four and more hyphens, dashes, and YAML's own `...`. */
export function isOddFence(line: string): boolean {
  return (
    !isFence(line) &&
    /^(?:\.{3}|-{2,}|[-\u2010-\u2015\u2212]*[\u2010-\u2015\u2212][-\u2010-\u2015\u2212]*)[ \t]*$/.test(line)
  )
}

/** `title: …`, as the keys of this format are written. */
export function isKey(line: string): boolean {
  return /^[a-z][a-z0-9-]*[ \t]*:(?:[ \t]|$)/.test(line)
}

/** A line that may stand in front matter as this format writes it. */
export function isYamlLike(line: string): boolean {
  return line.trim() === '' || isKey(line) || /^[ \t#}\]"']/.test(line) || /^- /.test(line)
}
