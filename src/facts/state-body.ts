import type { Link, ListItem, Nodes, Root } from 'mdast'
import type {} from '../../plugins/connector/node.ts'
import type {} from '../../plugins/figures/node.ts'
import type {} from '../../plugins/jobs/node.ts'
import type { QuantityNode } from '../../plugins/quantities/node.ts'
import type {} from '../../plugins/things/node.ts'
import { addReference } from './add-reference.ts'
import type { Around } from './around.ts'
import { placeOfPosition } from './body-place.ts'
import { wordsOf } from './body-words.ts'
import { notePath, photoPath } from './content-path.ts'
import type { KindsStated } from './kinds-stated.ts'
import { kindsOf } from './privacy.ts'
import { addFact, addFigure, markFigure, type Sheet } from './sheet.ts'
import { stateConnector } from './state-connector.ts'
import { stateMeasure } from './state-measure.ts'
import { stateTable } from './state-table.ts'

/** What the body of a note states, in the order of its text. Without recursion, so that no depth of nesting is too deep. */
export function stateBody(sheet: Sheet, body: Root, kinds: KindsStated): void {
  const waiting: { node: Nodes; around: Around }[] = [{ node: body, around: { privacy: [], connector: null, kinds } }]
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { node, around } = next
    stateNode(sheet, node, around)
    if (!('children' in node)) continue
    const within = aroundChildren(node, around)
    for (const child of node.children.toReversed()) waiting.push({ node: child, around: within })
  }
}

function aroundChildren(node: Nodes, around: Around): Around {
  if (node.type === 'private' || node.type === 'privateBlock')
    return { ...around, privacy: [...around.privacy, node.as] }
  return node.type === 'connector' ? { ...around, connector: node } : around
}

function stateNode(sheet: Sheet, node: Nodes, around: Around): void {
  if (node.type === 'quantity') stateProse(sheet, node, around)
  else if (node.type === 'measure') stateMeasure(sheet, node, around)
  else if (node.type === 'connector') stateConnector(sheet, node, around)
  else if (node.type === 'table') stateTable(sheet, node, around)
  else if (node.type === 'listItem') stateJob(sheet, node, around)
  else if (node.type === 'link') stateLink(sheet, node)
  else if (node.type === 'image') statePhoto(sheet, node)
}

/** Enters a figure that nobody named, and says of every one in which private marks it stands. */
function stateProse(sheet: Sheet, node: QuantityNode, { privacy }: Around): void {
  if (node.position === undefined) return
  const place = placeOfPosition(node.position, sheet.file)
  node.id ??= addFigure(sheet, { quantity: node.quantity, place, role: 'prose', path: null })
  markFigure(sheet, node.id, kindsOf(privacy))
}

function stateJob(sheet: Sheet, node: ListItem, { privacy }: Around): void {
  const job = node.data?.job
  const [paragraph] = node.children
  if (job === undefined || paragraph === undefined) return
  const read = wordsOf([paragraph], { file: sheet.file, privacy })
  if (read === null) return
  const place = job.position === null ? read.place : placeOfPosition(job.position, sheet.file)
  const { id, explicit, done, before } = job
  addFact(sheet, { type: 'job', id, explicit, words: read.words, done, before, place })
}

/** A link to a thing, or to another note. */
function stateLink(sheet: Sheet, { data, position }: Link): void {
  if (position === undefined) return
  const place = placeOfPosition(position, sheet.file)
  if (data?.thing !== undefined)
    addReference(sheet, { to: data.thing.scheme, name: data.thing.path, strictness: 'must-exist', place })
  else if (data?.note !== undefined)
    addReference(sheet, { to: 'note', name: notePath(data.note, sheet.file), strictness: 'must-exist', place })
}

function statePhoto(sheet: Sheet, { url, position }: Extract<Nodes, { type: 'image' }>): void {
  if (position === undefined) return
  addReference(sheet, {
    to: 'photo',
    name: photoPath(url, sheet.file),
    strictness: 'must-exist',
    place: placeOfPosition(position, sheet.file),
  })
}
