import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Nodes } from 'mdast'
import { describe, expect, test } from 'vitest'
import { run, whole } from '../chain.ts'
import { outline } from '../nodes-of.ts'

const folder = join(import.meta.dirname, 'fixtures')

/** `UPDATE=1` writes the outcomes anew; they are then read by eye. */
const update = process.env.UPDATE === '1'

/** What the plugins put beside the nodes, without places. */
function beside(node: Nodes): string[] {
  const own =
    node.data === undefined
      ? []
      : [`${node.type} ${JSON.stringify(node.data, (key, value) => (/position$/i.test(key) ? undefined : value))}`]
  return 'children' in node ? [...own, ...node.children.flatMap(beside)] : own
}

describe('a note through all plugins', () => {
  test.each(readdirSync(folder))('%s', name => {
    const { tree, messages } = run(whole, readFileSync(join(folder, name, 'input.txt'), 'utf8'))
    const outcome = [...outline(tree), '', ...beside(tree), '', ...messages, ''].join('\n')
    const path = join(folder, name, 'outcome.txt')
    if (update) writeFileSync(path, outcome)
    expect(existsSync(path), `${name} has an outcome`).toBe(true)
    expect(outcome).toBe(readFileSync(path, 'utf8'))
  })
})
