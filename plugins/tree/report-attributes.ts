import leven from 'leven'
import type { Position } from 'unist'
import type { VFile } from 'vfile'
import type { DirectiveNode } from './private-mark.ts'
import { report } from './report.ts'

interface KnownAttributes {
  readonly known: readonly string[]
  /** Where the value of each stands. */
  readonly positions: Readonly<Record<string, Position>>
}

/** Tells of attributes that a directive does not know: `{off="fuel-tank/length"}` would be lost in silence. */
export function reportAttributes(file: VFile, directive: DirectiveNode, { known, positions }: KnownAttributes): void {
  for (const name of Object.keys(directive.attributes ?? {})) {
    if (known.includes(name)) continue
    const near = known.find(each => leven(each, name) === 1) ?? null
    report(file, {
      rule: 'unknown-key',
      place: positions[name] ?? directive.position,
      reason: `Unexpected \`${name}\` of \`${directive.name}\`, expected ${known.map(each => `\`${each}\``).join(', ')}`,
      actual: name,
      mend: near,
    })
  }
}
