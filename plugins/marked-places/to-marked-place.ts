import type { Nodes } from 'mdast'
import type { TextDirective } from 'mdast-util-directive'
import type { VFile } from 'vfile'
import { attributePositions } from '../tree/directive-source.ts'
import { report } from '../tree/report.ts'
import { reportAttributes } from '../tree/report-attributes.ts'
import { type Source, spanOf } from '../tree/source.ts'
import { lineOf } from '../tree/text-of.ts'
import type { MarkedPlaceNode } from './node.ts'
import { readPlace } from './read-place.ts'

interface Reading {
  readonly source: Source
  readonly file: VFile
  /** Marks of which nothing more is told: what is wrong with them, or with their block, was told already. */
  readonly told: Set<Nodes>
}

/** The mark as a node of ours; one without a number is the words of its label. */
export function toMarkedPlace(mark: TextDirective, { source, file, told }: Reading): readonly Nodes[] {
  const span = spanOf(mark)
  const positions = span === null ? {} : attributePositions(source, span)
  const label = lineOf(mark)
  const isTold = told.has(mark)
  const tell = (reason: string, mend: string | null = null, place = mark.position): void => {
    if (!isTold) report(file, { rule: 'marked-place', place, reason, mend })
  }
  if (!isTold) reportAttributes(file, mark, { known: ['at'], positions })
  if (!/^[1-9]\d?$/u.test(label)) {
    tell(`Unexpected \`:mark[${label}]\`, expected a number from 1 to 99 such as \`:mark[2]{at="40%,25%"}\``)
    return mark.children
  }
  const written = mark.attributes?.at ?? null
  const read = written === null ? { at: null } : readPlace(written)
  if ('trouble' in read) tell(read.trouble, read.mend, positions.at ?? mark.position)
  const place: MarkedPlaceNode = {
    type: 'markedPlace',
    value: `(${label})`,
    number: Number(label),
    at: 'at' in read ? read.at : null,
    picture: null,
    ...(mark.position && { position: mark.position }),
  }
  if (isTold || 'trouble' in read) told.add(place)
  return [place]
}
