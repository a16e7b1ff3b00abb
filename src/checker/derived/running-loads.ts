import type { AsBuiltRecord, Thing } from '../../record/record.ts'
import type { Input } from '../input.ts'
import { isLive, usedWords, wordsOf } from '../look-up.ts'
import { type CheckSubject, type Scope, withSubject } from '../scope.ts'
import { partElseVehicle, type SubjectSource, subjectOf } from '../subjects.ts'
import { loadAsWritten } from './circuit-current.ts'
import { boxFedBy } from './circuit-graph.ts'

/** The alternator, else the vehicle, of a record that has live circuits. */
export function chargedFrom(): SubjectSource {
  return whereLive(partElseVehicle('alternator', 'the alternator, else the vehicle'), isLive)
}

/** The battery, else the vehicle, of a record in which a live circuit draws with the ignition off. */
export function drainedFrom(): SubjectSource {
  return whereLive(
    partElseVehicle('battery', 'the battery, else the vehicle, where a circuit draws with the ignition off'),
    isStanding,
  )
}

function whereLive(source: SubjectSource, isWanted: (circuit: Thing) => boolean): SubjectSource {
  const find = (record: AsBuiltRecord) =>
    source
      .find(record)
      .map(one => ({ ...one, isCurrent: one.isCurrent && record.circuits.some(circuit => isWanted(circuit)) }))
  return { ...source, find }
}

const isStanding = (circuit: Thing): boolean => isLive(circuit) && wordsOf(circuit, 'duty') === 'standing'

/** The continuous loads of all live circuits, each whole; what is left out is said, with the reason. */
export function continuousLoads(symbol: string): Input<readonly number[]> {
  return eachLoad(symbol, 'continuous loads', scope => {
    const live = scope.record.circuits.filter(isLive)
    const counted = live.filter(circuit => reasonToLeave(circuit, scope) === null)
    const left = live.flatMap(circuit => {
      const reason = reasonToLeave(circuit, scope)
      return reason === null ? [] : [`${circuit.id} (${reason})`]
    })
    if (left.length > 0) scope.notebook.note(`Left out: ${left.join(', ')}.`)
    for (const { id } of counted.filter(circuit => wordsOf(circuit, 'duty') === null))
      scope.notebook.assume(`duty of ${id} \`continuous\``)
    return counted
  })
}

function reasonToLeave(circuit: Thing, scope: Scope): string | null {
  const box = boxFedBy(scope, circuit.id)
  if (box !== null) return `carries the loads of ${box}, which are counted one by one`
  const duty = usedWords(scope, circuit, 'duty') ?? 'continuous'
  if (duty !== 'continuous') return duty
  return isOwnLead(circuit, scope) ? 'carries what the alternator gives' : null
}

/** The lead from the alternator to the battery is no load of it: of use `charging`, and the alternator is named in it. */
function isOwnLead(circuit: Thing, scope: Scope): boolean {
  if (wordsOf(circuit, 'use') !== 'charging') return false
  const route = circuit.properties.route?.at(-1)?.value
  const places = route?.type === 'list' ? route.entries.map(({ words }) => words.text) : []
  const names = [
    'alternator',
    ...scope.record.parts.filter(({ partKind }) => partKind === 'alternator').map(({ id }) => id),
  ]
  const said = [circuit.id, circuit.name, wordsOf(circuit, 'feeds') ?? '', wordsOf(circuit, 'supply') ?? '', ...places]
  return names.some(name => said.some(words => words.toLowerCase().includes(name)))
}

/** What all live circuits of duty `standing` draw with the ignition off. */
export function standingLoads(symbol: string): Input<readonly number[]> {
  return eachLoad(symbol, 'loads with the ignition off', scope => {
    const standing = scope.record.circuits.filter(isStanding)
    for (const circuit of standing) usedWords(scope, circuit, 'duty')
    return standing
  })
}

function eachLoad(symbol: string, meaning: string, of: (scope: Scope) => readonly Thing[]): Input<readonly number[]> {
  const load = loadAsWritten(symbol)
  return {
    symbol,
    meaning,
    dimension: 'current',
    reads: ['circuit/duty', 'circuit/state', ...load.reads],
    read: scope => {
      const subjects = of(scope).map((circuit): CheckSubject => subjectOf('circuit', circuit))
      if (subjects.length === 0) scope.notebook.need(scope.subject.id, `no ${meaning} are in the record`)
      const found = subjects.map(subject => load.read(withSubject(scope, subject)))
      const terms = found.flatMap(one => (one?.type === 'figure' ? [one.term] : []))
      return terms.length === 0 || (terms.length < found.length && scope.leavesOut !== true)
        ? null
        : { type: 'figures', terms }
    },
  }
}
