import type { ParseContext } from 'micromark-util-types'

/** Lines of the file, both included. */
interface LineRange {
  readonly first: number
  readonly last: number
}

/** How many containers stand around each line of one file, as far as it is parsed: the outer ones come first. */
interface Nesting {
  depthAt(line: number): number
  /** Tells of a container; the same one may be told of again, with more lines. */
  add(container: LineRange): void
}

const nestings = new WeakMap<ParseContext, Nesting>()

export function nestingOf(parser: ParseContext): Nesting {
  const nesting = nestings.get(parser) ?? countContainers()
  nestings.set(parser, nesting)
  return nesting
}

function countContainers(): Nesting {
  const depths = new Map<number, number>()
  const counted = new Map<number, number>()
  return {
    depthAt: line => depths.get(line) ?? 0,
    add({ first, last }) {
      for (let line = (counted.get(first) ?? first) + 1; line <= last; line++)
        depths.set(line, (depths.get(line) ?? 0) + 1)
      counted.set(first, Math.max(last, counted.get(first) ?? first))
    },
  }
}
