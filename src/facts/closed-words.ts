import type { PrivateKind } from '../../plugins/private/node.ts'
import type { Action } from './fact.ts'

export const actions = [
  'ordered',
  'received',
  'made',
  'modified',
  'trial-fitted',
  'fitted',
  'removed',
  'rejected',
  'returned',
  'sold',
  'scrapped',
] as const satisfies readonly Action[]

/** The closed lists of words that a key may hold. */
export const closedWords = {
  fits: ['yes', 'no', 'with-work'],
  use: ['lighting', 'pump', 'ignition', 'heating', 'charging', 'starting', 'signal', 'other'],
  duty: ['continuous', 'intermittent', 'starting', 'standing'],
  supply: ['battery', 'ignition', 'accessory'],
  state: ['planned', 'live', 'temporary', 'removed'],
  result: ['pass', 'fail', 'partial'],
  before: ['road', 'inspection'],
  gallon: ['imperial', 'us'],
  mil: ['mm', 'thou'],
  decimal: ['point', 'comma'],
} as const

export const privateKinds = ['cost', 'source', 'people', 'place', 'identity'] as const satisfies readonly PrivateKind[]

/** The word itself where the list holds it; null where it does not. */
export function wordOf<T extends string>(text: string | null | undefined, words: readonly T[]): T | null {
  return words.find(word => word === text?.trim()) ?? null
}
