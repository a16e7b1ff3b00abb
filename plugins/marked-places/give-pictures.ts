import type { Image, Nodes, Root } from 'mdast'
import type { VFile } from 'vfile'
import { report } from '../tree/report.ts'
import type { MarkedPlaceNode } from './node.ts'
import { pairPictures } from './pair-pictures.ts'

/** The first place of each number on a picture. */
type Points = Map<number, MarkedPlaceNode>

/** Numbers the pictures that bear marks, gives each mark its picture, and tells of those that name no point. */
export function givePictures(tree: Root, file: VFile, told: ReadonlySet<Nodes>): void {
  const pairs = pairPictures(tree)
  const points = new Map<Image, Points>()
  for (const [mark, image] of pairs) {
    if (image === null) continue
    const own: Points = points.get(image) ?? new Map()
    points.set(image, own)
    image.data = { ...image.data, picture: image.data?.picture ?? points.size }
    mark.picture = image.data.picture ?? null
    const first = own.get(mark.number)
    if (mark.at !== null && first !== undefined) takeBack(mark, first, { file, url: image.url })
    else if (mark.at !== null) own.set(mark.number, mark)
  }
  for (const [mark, image] of pairs) {
    if (told.has(mark)) continue
    if (image === null) reportAlone(mark, file)
    else if (points.get(image)?.get(mark.number) === undefined) reportUnplaced(mark, file)
  }
}

function takeBack(
  mark: MarkedPlaceNode,
  first: MarkedPlaceNode,
  { file, url }: { readonly file: VFile; readonly url: string },
): void {
  const line = first.position?.start.line
  const where = line === undefined ? '' : ` at line ${line}`
  mark.at = null
  report(file, {
    rule: 'marked-place',
    place: mark.position,
    reason: `Unexpected second place for mark ${mark.number} on \`${url}\`, expected another number: the first${where} stands`,
    mend: `:mark[${mark.number}]`,
  })
}

function reportAlone({ number, position }: MarkedPlaceNode, file: VFile): void {
  report(file, {
    rule: 'marked-place',
    place: position,
    reason: `Unexpected \`:mark[${number}]\` with no picture beside it, expected one above or below it under the same heading`,
  })
}

function reportUnplaced({ number, position }: MarkedPlaceNode, file: VFile): void {
  report(file, {
    rule: 'marked-place',
    place: position,
    reason: `Unexpected \`:mark[${number}]\` without its place, expected \`:mark[${number}]{at="40%,25%"}\`: per cent of the picture from the left and from the top`,
  })
}
