import type { Input } from '../input.ts'
import { derived } from '../inputs/derived.ts'
import { withSubject } from '../scope.ts'
import { circuitCurrent } from './circuit-current.ts'
import { feedOfSubject } from './circuit-graph.ts'
import { jointsResistance, outwardResistance, returnResistance } from './loop-resistance.ts'

const deepestFeed = 5 // boxes in a row; more is a feed that leads back to itself

/** The drop of the circuit that feeds the box in which the subject is fused, at the sum of its box's loads; none without one. */
export function feedDrop(tag = '_feed'): Input<number> {
  return {
    symbol: `DeltaU${tag}`,
    meaning: 'drop of the feed of the fuse box',
    dimension: 'voltage',
    reads: ['circuit/fuse.box', 'fuse-box/feed'],
    read: scope => {
      const [feed] = feedOfSubject(scope)
      if (feed === undefined) return { type: 'none' }
      if (tag.split('_feed').length <= deepestFeed) return loopDrop(tag).read(withSubject(scope, feed))
      scope.notebook.need(`circuit:${feed.id}/fuse.box`, `${feed.id} is fed by way of itself`)
      return null
    },
  }
}

function loopDrop(tag: string): Input<number> {
  return derived({
    symbol: `DeltaU${tag}`,
    meaning: 'drop of the feed of the fuse box',
    dimension: 'voltage',
    inputs: {
      current: circuitCurrent(`I${tag}`),
      outward: outwardResistance({ tag }),
      back: returnResistance({ tag }),
      joints: jointsResistance(tag),
      feed: feedDrop(`${tag}_feed`),
    },
    formula: [
      {
        line: `DeltaU${tag} = I${tag} * (R_out${tag} + R_back${tag} + R_j${tag}) + DeltaU${tag}_feed`,
        unit: 'V',
        says: 'the feed of the fuse box, at the sum of its loads',
      },
    ],
  })
}
