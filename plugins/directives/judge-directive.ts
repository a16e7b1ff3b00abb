import { type DirectiveSource, directiveSource } from '../tree/directive-source.ts'
import { type DirectiveNode, whatPrivateLacks } from '../tree/private-mark.ts'
import { type Span, spanOf } from '../tree/source.ts'
import type { FailedMark } from './failed-mark.ts'
import { type DirectiveName, nearName } from './names.ts'

const forms: Record<DirectiveName, { types: readonly DirectiveNode['type'][]; shape: string }> = {
  private: {
    types: ['textDirective', 'containerDirective'],
    shape: '`:private[…]{as=…}` in a line or `:::private{as=…}` around blocks',
  },
  measure: { types: ['textDirective'], shape: '`:measure[…]{of="thing/property"}` in a line' },
  job: { types: ['textDirective'], shape: '`:job{#identifier}` in a line' },
  connector: { types: ['containerDirective'], shape: '`:::connector{#identifier}` around a pin table' },
  mark: { types: ['textDirective'], shape: '`:mark[2]{at="40%,25%"}` in a line' },
}

/** What is wrong with a directive that the parser found; null where it is whole. */
export function judgeDirective(node: DirectiveNode, source: string): FailedMark | null {
  const span = spanOf(node) ?? { start: 0, end: 0 }
  const head = directiveSource(source, span)
  const near = nearName(node.name)
  const failed = (reason: string, mend: string | null = null): FailedMark => ({
    span: { start: span.start, end: head.nameEnd },
    reason,
    mend,
  })
  const written = ':'.repeat(head.colons) + node.name
  if (near === null) return null
  if (!near.exact)
    return failed(
      `Unexpected directive \`${node.name}\`, expected \`${near.name}\``,
      ':'.repeat(head.colons) + near.name,
    )
  const { types, shape } = forms[near.name]
  if (!types.includes(node.type)) return failed(`Unexpected \`${written}\`, expected ${shape}`)
  const cut = cutOff(source, span, head)
  if (cut !== null) return failed(`Unexpected \`${cut}\` behind \`${written}\` that does not close, expected ${shape}`)
  const lack = near.name === 'private' ? whatPrivateLacks(node) : null
  if (lack !== null) return failed(lack)
  return isLeftOpen(node, source)
    ? failed(`Unexpected end of \`${written}\`, expected a line \`${':'.repeat(head.colons)}\` that closes it`)
    : null
}

/** The bracket or brace behind the mark which was meant for it but did not parse: cut by a cell's bar, or a quote left open. */
function cutOff(source: string, span: Span, { label, attributes }: DirectiveSource): string | null {
  if (attributes !== null) return null
  const next = /^[ \t]?([[{])/u.exec(source.slice(span.end, span.end + 2))?.[1]
  return next === undefined || (next === '[' && label !== null) ? null : next
}

/** Whether a container's last line is no fence of its own, behind all that it holds. */
export function isLeftOpen(node: DirectiveNode, source: string): boolean {
  const span = spanOf(node)
  if (node.type !== 'containerDirective' || span === null) return false
  const { colons, end } = directiveSource(source, span)
  const last = node.children.at(-1)
  const from = Math.max(end, (last && spanOf(last)?.end) ?? end)
  const fence = /(?:^|[\r\n])[ \t>]*(:+)[ \t]*$/u.exec(source.slice(from, span.end))?.[1] ?? ''
  return fence.length < colons
}
