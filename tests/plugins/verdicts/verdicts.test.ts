import type { Nodes, Root } from 'mdast'
import { expect, test } from 'vitest'
import quantities from '../../../plugins/quantities/index.ts'
import verdicts, { type Use } from '../../../plugins/verdicts/index.ts'
import { plain, run } from '../chain.ts'
import { nodesOf } from '../nodes-of.ts'

/** Numbers the figures as a note does. */
const numbered = () => (tree: Root) => {
  for (const [index, figure] of nodesOf(tree, 'quantity').entries()) figure.id = `q-${index + 1}`
}

const load: Use = { label: 'does the shelf carry the load?', verdict: 'pass', href: '../checks/load.html' }
const table: Use = { label: 'measurements', verdict: null, href: '../measurements.html', text: 'shelf/length' }

const outcome = (text: string, uses: Record<string, Use[]>): Root =>
  run(plain().use(quantities).use(numbered).use(verdicts, { uses }).freeze(), text).tree
const usesOf = (tree: Nodes, type: 'paragraph' | 'heading' | 'table'): (Use[] | undefined)[] =>
  nodesOf(tree, type).map(node => node.data?.uses)

test('each block of a README has the list of what used its figures, each use once', () => {
  const tree = outcome('# 5 mm\n\nIt is 860 mm by 300 mm.\n\nIt weighs 25 kg.\n\n- holds 64 L\n', {
    'q-1': [table],
    'q-2': [table, load],
    'q-3': [load],
    'q-5': [load],
  })
  expect(usesOf(tree, 'heading')).toEqual([[table]])
  expect(usesOf(tree, 'paragraph')).toEqual([[table, load], undefined, [load]])
  expect(nodesOf(tree, 'quantity').map(({ data }) => data?.used ?? false)).toEqual([true, true, true, false, true])
})

test('figures of a table have their list beside the table', () => {
  const tree = outcome('| a | b |\n|-|-|\n| 5 mm | 6 mm |', { 'q-2': [load] })
  expect(usesOf(tree, 'table')).toEqual([[load]])
  expect(usesOf(tree, 'paragraph')).toEqual([])
})

test.each([{}, { 'q-9': [load] }, { 'q-1': [] }])('uses of nothing change nothing: %j', uses => {
  expect(outcome('It is 5 mm.', uses)).toEqual(outcome('It is 5 mm.', { other: [load] }))
  expect(JSON.stringify(outcome('It is 5 mm.', uses))).not.toContain('used')
})
