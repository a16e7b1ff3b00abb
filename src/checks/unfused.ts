import { defineCheck, type Offender } from '../checker/check.ts'
import { fusableCircuits, fusedIn, sleeveOfLoom, wiredVehicle } from '../checker/derived/vehicle-circuits.ts'
import { members } from '../checker/inputs/each.ts'
import { optional } from '../checker/inputs/value.ts'
import { roundingSlack } from '../checker/limit.ts'

const bare = 0.1778 // m, 7 in, 33 CFR 183.455(b)(1)
const inSheath = 1.016 // m, 40 in, 33 CFR 183.455(b)(2)

/** The circuits that nothing protects, or that are bare of protection for too long. */
export default defineCheck({
  id: 'unfused',
  title: 'Unfused',
  question: 'Which live circuits have no fuse, or none near the source?',
  subject: wiredVehicle(),
  worthAsking: 'always',
  inputs: {
    circuits: members(
      { meaning: 'circuits that are live, but not those that start the engine', of: fusableCircuits },
      {
        fusedIn: fusedIn(),
        after: optional({
          of: 'circuit/fuse.after',
          symbol: 'x',
          meaning: 'distance of the fuse from the source',
          dimension: 'length',
          unit: 'mm',
        }),
        sheath: sleeveOfLoom(),
      },
    ),
  },
  compute: ({ circuits }) => {
    const allowed = ({ sheath }: (typeof circuits)[number]): number => (sheath === null ? bare : inSheath)
    const unfused = circuits.filter(({ fusedIn }) => fusedIn === null)
    const far = circuits.filter(one => one.after !== null && one.after > allowed(one) * (1 + roundingSlack))
    const unplaced = circuits.filter(({ fusedIn, after }) => fusedIn !== null && after === null)
    const upstream = circuits.filter(({ path, fusedIn }) => fusedIn !== null && path !== `circuit:${fusedIn}`)
    const list = (some: typeof circuits): string => some.map(({ path }) => path).join(', ')
    return {
      offenders: [
        ...unfused.map(({ path }): Offender => ({ path, why: 'has no fuse' })),
        ...far.map(
          (one): Offender => ({
            path: one.path,
            why: `has its fuse further from the source than ${one.sheath === null ? '7 in, in no sheath' : '40 in, in a sheath'}`,
          }),
        ),
      ],
      notes: [
        ...(unplaced.length === 0
          ? []
          : [`How far the fuse is from the source is not written, so nearness is not asked: ${list(unplaced)}.`]),
        ...(upstream.length === 0
          ? []
          : [
              `Fused in the circuit that supplies them; whether that fuse protects their cables is not asked: ${list(upstream)}.`,
            ]),
      ],
    }
  },
  source: {
    title: '33 CFR 183.455(b)',
    section:
      'for boats: the fuse within 7 in of the source along the cable, within 40 in where it is sheathed all the way',
  },
  limit: {
    who: 'practice',
    source:
      'good practice; the distances are those of 33 CFR 183.455(b), law for boats: no law for cars was found, and local codes and licensed practice decide',
    max: { value: 0, unit: '1' },
  },
  caution:
    'Between the source and its fuse nothing protects a cable: keep that length short, in a sheath of its own, away from edges and heat. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  cannotMiss: 'what is absent is what it counts',
  examples: [
    {
      given: {
        'circuit:pump/fuse.rating': '15 A',
        'circuit:lamp/fuse.box': 'aux-fuses',
        'circuit:lamp/fuse.after': '7 in',
        'circuit:starter/duty': 'starting',
        'circuit:clock/supply': 'lamp',
      },
      expect: 'pass',
      value: 0,
      source:
        '33 CFR 183.455(b)(1): 7 in is at the limit; the starter is not asked, the clock is fused in the circuit that supplies it',
    },
    {
      given: {
        'circuit:feed/fuse.rating': '60 A',
        'circuit:feed/fuse.after': '40 in',
        'circuit:feed/loom': 'battery-loom',
        'loom:battery-loom/sleeve': '16 mm',
      },
      expect: 'pass',
      value: 0,
      source: '33 CFR 183.455(b)(2): 40 in in a sheath, at the limit',
    },
    {
      given: {
        'circuit:feed/fuse.rating': '60 A',
        'circuit:feed/fuse.after': '1017 mm',
        'circuit:feed/loom': 'battery-loom',
        'loom:battery-loom/sleeve': '16 mm',
        'circuit:lamp/fuse.rating': '5 A',
        'circuit:lamp/fuse.after': '178 mm',
        'circuit:horn/load': '5 A',
        'circuit:radio/state': 'planned',
      },
      expect: 'fail',
      value: 3,
      source:
        '33 CFR 183.455(b): 1017 mm is past 40 in (1016 mm), 178 mm is past 7 in (177.8 mm), and the horn has no fuse',
    },
  ],
})
