import { cpSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { type Built, publicationOf, readBuildFolder, searchIndexOf } from '../../src/build.ts'
import { withheldNames } from '../../src/editions/withheld-names.ts'
import { root, scratch } from '../commands/run-oddleg.ts'

// Pages, tables, feed and index are made of the publication alone: where it is the same whatever the tank cost, none can tell what it cost.

const note = 'content/sessions/2026-04-11-tank-to-a-drawing.md'
const price = 'cost: £265'

async function demoWith(cost: string): Promise<Built> {
  const folder = scratch('price')
  cpSync(join(root, 'content'), join(folder, 'content'), { recursive: true })
  const text = readFileSync(join(folder, note), 'utf8')
  if (!text.includes(price))
    throw new Error(`Unexpected note without \`${price}\`, expected what the tank of the demo cost`)
  writeFileSync(join(folder, note), text.replace(price, cost))
  const built = await readBuildFolder(folder, { today: '2026-12-31' })
  if ('trouble' in built) throw new Error(built.trouble)
  return built
}

/** All that pages, files and the search of an edition are made of. */
function madeOf(built: Built, edition: string): string {
  const publication = publicationOf(built, edition)
  return JSON.stringify([publication, searchIndexOf(publication)])
}

let dear: Built
let asWritten: Built
beforeAll(async () => {
  asWritten = await demoWith(price)
  dear = await demoWith('cost: €98,765.43')
}, 60_000)

describe('the demo', () => {
  test('tells nothing of what its tank cost in the edition public, and none of its donors', () => {
    const told = madeOf(asWritten, 'public')
    expect(told === madeOf(dear, 'public')).toBe(true)
    expect(told).not.toMatch(/corvane|halvern|ostrel/i)
  })

  test('tells both in full', () => {
    const told = madeOf(asWritten, 'full')
    expect(told === madeOf(dear, 'full')).toBe(false)
    expect(told).toMatch(/265\.00.*Halvern/)
  })

  test('names no donor in what cannot be covered', () => {
    expect(withheldNames(asWritten.stated, ['public'])).toEqual([])
  })
})
