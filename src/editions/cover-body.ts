import type { Link, ListItem, Nodes, Parents, Root, Table, TableCell, TableRow, Text } from 'mdast'
import type { MeasureNode } from '../../plugins/measure/node.ts'
import type { PrivateBlockNode, PrivateKind, PrivateNode } from '../../plugins/private/node.ts'
import type { QuantityNode } from '../../plugins/quantities/node.ts'
import { coverText, hiddenSpans, isStray } from './cover-text.ts'
import { type CrossingSpans, crossingSpans } from './crossing-spans.ts'
import { dropLostMarks } from './drop-lost-marks.ts'
import { dropUnreferenced } from './drop-unreferenced.ts'
import { hiddenColumns } from './hidden-columns.ts'
import { joinMarks, markAt, markBlock, withoutOffsets } from './mark-nodes.ts'
import { isPicture, textOf } from './node-text.ts'
import type { Taken } from './taken.ts'
import { isHidden, neutralMark, type Withheld } from './withheld.ts'

/** What covering a body needs to know of the whole build. */
interface BodyGround {
  readonly withheld: Withheld
  readonly file: string
  /** Figures of the note that are taken out, `q-4`. */
  readonly isHiddenFigure: (id: string | undefined) => boolean
  readonly isDonorPath: (path: string) => boolean
  readonly isHiddenPhoto: (address: string) => boolean
  /** Identifiers that were made from withheld words, anew. */
  readonly rename: (path: string) => string
  readonly take: (taken: Taken) => void
  readonly crossing?: CrossingSpans
}

/** A body in which nothing withheld exists: nodes are made anew, those that stay keep their place without its offsets. */
export function coverBody(body: Root, ground: BodyGround): Root {
  const covered = copyOf(body, ground) as Root
  const dropped = (node: Nodes): void => takeNode(ground, node, 'broken')
  return dropLostMarks(dropUnreferenced(body, covered, dropped), dropped)
}

function coverNode(node: Nodes, ground: BodyGround): Nodes[] {
  switch (node.type) {
    case 'private':
    case 'privateBlock':
      return coverPrivate(node, ground)
    case 'quantity':
      return coverQuantity(node, ground)
    case 'measure':
      return coverMeasure(node, ground)
    case 'link':
      return coverLink(node, ground)
    case 'linkReference':
      return holdsHidden(node, ground) ? coverChildren(node, ground) : [copyOf(node, ground)]
    case 'image':
      return ground.isHiddenPhoto(node.url) ? [replaced(node, ground, 'cost')] : [copyOf(node, ground)]
    case 'figure':
      return ground.isHiddenPhoto(node.children[0].url)
        ? [markBlock(replaced(node, ground, 'cost'))]
        : [copyOf(node, ground)]
    case 'table':
      return [coverTable(node, ground)]
    default:
      return [copyOf(node, ground)]
  }
}

function coverPrivate(node: PrivateNode | PrivateBlockNode, ground: BodyGround): Nodes[] {
  if (!isHidden(ground.withheld, [node.as])) return coverChildren(node, ground)
  const mark = replaced(node, ground, node.as)
  return node.type === 'private' ? [mark] : [markBlock(mark)]
}

function coverQuantity(node: QuantityNode, ground: BodyGround): Nodes[] {
  if (ground.isHiddenFigure(node.id)) return [replaced(node, ground, 'cost')]
  return [copyOf(node, ground)]
}

/** A name stays with its figure only. */
function coverMeasure(node: MeasureNode, ground: BodyGround): Nodes[] {
  const isUnnamed = node.of !== null && (ground.isDonorPath(node.of) || isStray(node.of))
  if (isUnnamed || holdsHidden(node, ground)) return coverChildren(node, ground)
  return [copyOf(node, ground)]
}

/** A link to a donor goes whole; of a link with withheld words in it only the other words stay. */
function coverLink(node: Link, ground: BodyGround): Nodes[] {
  const { thing } = node.data ?? {}
  if (thing !== undefined && isDonorLink(thing, ground)) return [replaced(node, ground, 'source')]
  if (ground.isHiddenPhoto(node.url)) return [replaced(node, ground, 'cost')]
  return holdsHidden(node, ground) ? coverChildren(node, ground) : [copyOf(node, ground)]
}

function isDonorLink({ scheme, path }: { scheme: string; path: string }, ground: BodyGround): boolean {
  if (!ground.withheld.kinds.has('source')) return false
  return scheme === 'donor' || (scheme === 'measurement' && ground.isDonorPath(path))
}

function coverTable(table: Table, ground: BodyGround): Table {
  const columns = hiddenColumns(table, ground.withheld)
  const copy = copyOf(table, ground) as Table
  if (columns.size === 0) return copy
  const rows = copy.children.map((row, at): TableRow => {
    const original = table.children[at]
    return at === 0
      ? row
      : {
          ...row,
          children: row.children.map((cell, column) =>
            coverCell(cell, original?.children[column], columns.get(column)),
          ),
        }
  })
  return { ...copy, children: rows }

  function coverCell(cell: TableCell, original: TableCell | undefined, as: PrivateKind | undefined): TableCell {
    if (as === undefined || original === undefined || textOf(original).trim() === '') return cell
    return { ...cell, children: [replaced(original, ground, as)] }
  }
}

/** Whether anything within a node is taken out because of a mark. */
function holdsHidden(node: Nodes, ground: BodyGround): boolean {
  if (node.type === 'private' && isHidden(ground.withheld, [node.as])) return true
  return 'children' in node && node.children.some(child => holdsHidden(child, ground))
}

function coverChildren(node: Parents, ground: BodyGround): Nodes[] {
  return joinMarks(node.children.flatMap(child => coverNode(child, ground)))
}

const words = [
  'value',
  'alt',
  'title',
  'caption',
  'meta',
  'lang',
  'label',
  'name',
  'mates',
  'rating',
  'with',
  'note',
] as const

/** The node anew: its words covered, its identifiers renamed, no offset of the file left in it. */
function copyOf(node: Nodes, around: BodyGround): Nodes {
  const crossing = crossingSpans(node, text => hiddenSpans(text, around.withheld))
  const ground = crossing === null ? around : { ...around, crossing }
  const copy: Record<string, unknown> = { ...node, ...coveredWords(node, ground) }
  if (typeof copy.of === 'string') copy.of = ground.rename(copy.of)
  if ('url' in node && !isPicture(node)) copy.url = ground.rename(node.url)
  if ('attributePositions' in node) copy.attributePositions = {}
  if (node.position !== undefined) copy.position = withoutOffsets(node.position)
  const data = dataOf(node, ground)
  if (data === null) delete copy.data
  else copy.data = data
  if ('children' in node) copy.children = coverChildren(node, ground)
  return copy as unknown as Nodes
}

function coveredWords(node: Nodes, { withheld, crossing }: BodyGround): Record<string, string> {
  if (node.type === 'quantity') return {}
  const own = node as unknown as Readonly<Record<string, unknown>>
  return Object.fromEntries(
    words.flatMap(key => {
      const value = own[key]
      const spans = key === 'value' ? (crossing?.get(node) ?? []) : []
      return typeof value === 'string' ? [[key, coverText(value, withheld, spans)]] : []
    }),
  )
}

/** Of what the plugins noted on a node only what is known here: anything else is left behind. */
function dataOf(node: Nodes, ground: BodyGround): Record<string, unknown> | null {
  if (node.type === 'link' && node.data?.thing !== undefined) {
    const { scheme, path } = node.data.thing
    return { thing: { scheme, path: ground.rename(path) } }
  }
  if (node.type === 'link' && node.data?.note !== undefined) return { note: node.data.note }
  if (node.type === 'image' && node.data?.picture !== undefined) return { picture: node.data.picture }
  if (node.type === 'table' && node.data?.reading !== undefined) return { reading: node.data.reading }
  return node.type === 'listItem' ? jobOf(node, ground) : null
}

/** A job none of whose words is left is an item like any other. */
function jobOf(item: ListItem, ground: BodyGround): Record<string, unknown> | null {
  const job = item.data?.job
  const [first] = item.children
  if (job === undefined || first === undefined) return null
  const left = coverNode(first, { ...ground, take: () => undefined })
    .map(textOf)
    .join('')
    .trim()
  if (left === neutralMark) return null
  const text = left.includes(neutralMark) ? left.replace(/\s+/g, ' ') : job.text
  return { job: { ...job, id: ground.rename(job.id), text, position: null, beforePosition: null } }
}

function replaced(node: Nodes, ground: BodyGround, as: Taken['as']): Text {
  takeNode(ground, node, as)
  return markAt(node.position)
}

function takeNode(ground: BodyGround, node: Nodes, as: Taken['as']): void {
  if (node.position === undefined) return
  const { start, end } = node.position
  const place = { file: ground.file, line: start.line, column: start.column, endLine: end.line, endColumn: end.column }
  ground.take({ place, as, what: textOf(node) })
}
