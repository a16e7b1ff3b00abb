import type { Input } from '../input.ts'
import { derived } from '../inputs/derived.ts'
import { type Scope, withSubject } from '../scope.ts'
import { feedOfSubject } from './circuit-graph.ts'
import { jointsResistance, outwardResistance, returnResistance } from './loop-resistance.ts'

const sides = {
  supply: { of: 's', says: 'there, with half of its joints', read: outwardResistance, symbol: 'R_out_feed' },
  earth: { of: 'e', says: 'back, with half of its joints', read: returnResistance, symbol: 'R_back_feed' },
} as const

/** One side of the feed of the box in which a starter is fused: while it cranks, its current runs there too. None without a feed. */
export function startingFeed(side: keyof typeof sides): Input<number> {
  const { of, says, read, symbol } = sides[side]
  const spec = {
    symbol: `R_feed_${of}`,
    meaning: `resistance of the feed of the fuse box, ${side}`,
    dimension: 'resistance',
  } as const
  const feed = derived({
    ...spec,
    inputs: { cable: read({ tag: '_feed' }), joints: jointsResistance('_feed') },
    formula: [{ line: `R_feed_${of} = ${symbol} + R_j_feed / 2`, unit: 'mOhm', says: `the feed of the box ${says}` }],
  })
  return { ...feed, read: (scope: Scope) => readFeed(feed, scope) }
}

function readFeed(input: Input<number>, scope: Scope): ReturnType<Input['read']> {
  const [feed] = feedOfSubject(scope)
  return feed === undefined ? { type: 'none' } : input.read(withSubject(scope, feed))
}
