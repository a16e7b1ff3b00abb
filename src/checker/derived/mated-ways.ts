import type { Found, FoundMember, Input, Member } from '../input.ts'
import { statedLeaf } from '../leaf.ts'
import { pathOf, targetOf, usedWords } from '../look-up.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { pinsOfMate, pinsOfSubject } from './connector-pins.ts'
import { readSide, type Side } from './way-side.ts'

/** One way of a mated pair as it stands on both halves; `met` is 2 for the second way of this half that meets the one over there. */
export type MatedWay = Member<
  { readonly met: number | null } & { readonly [F in `${'here' | 'there'}${'Carries' | 'Circuit'}`]: string | null } & {
    readonly [F in `${'here' | 'there'}${'Area' | 'Least' | 'Most' | 'Rating'}`]: number | null
  } & { readonly load: number | null; readonly isHere: string | null; readonly isThere: string | null }
>

/** Every way of both halves, each pair once; what is needed to tell like from like and is not written is missing. */
export function matedWays(): Input<readonly MatedWay[]> {
  return {
    symbol: null,
    meaning: 'ways of both halves, pair by pair',
    dimension: null,
    reads: [
      'pin/carries',
      'pin/circuit',
      'pin/meets',
      'pin/wire.area',
      'connector/section-min',
      'connector/section-max',
      'connector/rating',
      'circuit/load',
    ],
    read: scope => {
      const [here, there] = [pinsOfSubject(scope), pinsOfMate(scope)]
      if (isSilent(here, there, scope)) return null
      const pairs = here.map(pin => ({ pin, meets: partnerOf(pin, { there, scope }) }))
      const alone = there.filter(pin => !pairs.some(({ meets }) => meets === pin))
      const members = [
        ...pairs.map(({ pin, meets }, at) =>
          wayOf(scope, {
            here: pin,
            there: meets,
            met: pairs.slice(0, at + 1).filter(one => one.meets === meets).length,
          }),
        ),
        ...alone.map(pin => wayOf(scope, { here: null, there: pin, met: 0 })),
      ].filter(member => member !== null)
      return members.length < pairs.length + alone.length && scope.leavesOut !== true
        ? null
        : { type: 'members', members }
    },
  }
}

function isSilent(here: readonly CheckSubject[], there: readonly CheckSubject[], scope: Scope): boolean {
  const { subject, notebook } = scope
  const mate = subject.thing === null ? '' : (usedWords(scope, subject.thing, 'mates') ?? '')
  if (here.length === 0) notebook.need(`connector:${subject.id}/pins`, 'its ways are not written')
  if (there.length === 0) notebook.need(`connector:${mate}/pins`, 'the ways of the other half are not written')
  return here.length === 0 || there.length === 0
}

/** The way over there that a way meets: as either of the two says by `meets`, else the one of its own name. */
function partnerOf(
  pin: CheckSubject,
  { there, scope }: { there: readonly CheckSubject[]; scope: Scope },
): CheckSubject | null {
  const meets = (one: CheckSubject): string | null =>
    one.thing === null ? null : usedWords(scope, one.thing, `${one.prefix}meets`)
  const own = meets(pin)
  if (own !== null) return there.find(({ name }) => name === own) ?? null
  const named = there.find(other => meets(other) === pin.name)
  if (named !== undefined) return named
  const same = there.find(({ name }) => name === pin.name)
  return same === undefined || meets(same) !== null ? null : same
}

interface Pair {
  readonly here: CheckSubject | null
  readonly there: CheckSubject | null
  readonly met: number
}

function wayOf(scope: Scope, { here, there, met }: Pair): FoundMember | null {
  const sides = {
    here: here === null ? null : readSide(scope, here),
    there: there === null ? null : readSide(scope, there),
  }
  const pin = here ?? there
  if (pin?.thing == null) return null
  if ((here !== null && sides.here === null) || (there !== null && sides.there === null)) return null
  needLikeness(scope, { ...sides, pins: [here, there] })
  return {
    path: `${pathOf(pin.thing)}/pins.${pin.name}`,
    name: pin.name,
    fields: {
      ...fieldsOf('here', sides.here),
      ...fieldsOf('there', sides.there),
      load: loadOf(sides.here) ?? loadOf(sides.there) ?? none,
      met: {
        type: 'figure',
        term: statedLeaf('constant', { symbol: 'n', meaning: 'ways that meet it', value: met, unit: '1' }),
      },
      isHere: present(here),
      isThere: present(there),
    },
  }
}

const none: Found = { type: 'none' }
const present = (pin: CheckSubject | null): Found => (pin === null ? none : { type: 'words', words: pin.name })
const loadOf = (side: Side | null): Found | null => (side?.load.type === 'figure' ? side.load : null)

function fieldsOf(prefix: 'here' | 'there', side: Side | null): FoundMember['fields'] {
  return {
    [`${prefix}Carries`]: side?.carries ?? none,
    [`${prefix}Circuit`]: side?.circuit ?? none,
    [`${prefix}Area`]: side?.area ?? none,
    [`${prefix}Least`]: side?.least ?? none,
    [`${prefix}Most`]: side?.most ?? none,
    [`${prefix}Rating`]: side?.rating ?? none,
  }
}

/** Two ways of which neither words nor circuits can be laid beside each other: what one of them carries is missing. */
function needLikeness(
  scope: Scope,
  { here, there, pins }: { here: Side | null; there: Side | null; pins: readonly (CheckSubject | null)[] },
): void {
  if (here === null || there === null) return
  const isBoth = (key: 'carries' | 'circuit'): boolean => here[key].type === 'words' && there[key].type === 'words'
  if (isBoth('carries') || isBoth('circuit')) return
  for (const [at, side] of [here, there].entries()) {
    const pin = pins[at]
    if (side.carries.type === 'none' && pin?.thing != null)
      scope.notebook.need(targetOf(pin.thing, `${pin.prefix}carries`).path, 'what it carries is not written')
  }
}
