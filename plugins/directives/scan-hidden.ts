import type { Nodes } from 'mdast'
import { directiveSource } from '../tree/directive-source.ts'
import type { Span } from '../tree/source.ts'
import { scanText, type TextMark } from './scan-text.ts'

/** Marks where no mark is read: alternatives and titles of pictures, titles of links, raw HTML. */
export function scanHidden(node: Nodes, source: string, span: Span): TextMark[] {
  switch (node.type) {
    case 'image':
    case 'imageReference':
      return hidden(source, span, 'an alternative text or title')
    case 'link':
      return hidden(
        source,
        { start: node.children.at(-1)?.position?.end.offset ?? span.start, end: span.end },
        'an address or title',
      )
    case 'definition':
      return hidden(source, span, 'a definition')
    case 'html':
      return hidden(source, span, 'raw HTML')
    default:
      return []
  }
}

function hidden(source: string, span: Span, where: string): TextMark[] {
  return scanText(source, span, false).flatMap(mark => {
    if (mark.kind !== 'failed' || !isWritten(source, mark.span, span)) return []
    const written = source.slice(mark.span.start, mark.span.end)
    return [
      { ...mark, reason: `Unexpected \`${written}\` in ${where}, expected it outside, where it is read`, mend: null },
    ]
  })
}

/** A mark and not a part of an address such as `photo:private.jpg`: it has a label or attributes, or words around it. */
function isWritten(source: string, mark: Span, span: Span): boolean {
  const next = source.charAt(mark.end)
  if (next === '[' || next === '{') return true
  const alternative = source.startsWith('![', span.start)
    ? directiveSource(source, { start: span.start + 1, end: span.end }).label
    : null
  return alternative !== null && mark.end <= alternative.end
}
