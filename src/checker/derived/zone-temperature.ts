import type { Found, Input } from '../input.ts'
import { figureAt } from '../inputs/value.ts'
import { targetOf, usedWords } from '../look-up.ts'
import type { Scope } from '../scope.ts'

/** The temperature of a circuit's zone, the hottest on its way; `ambient` of build.md where no zone is named. */
export function zoneTemperature(symbol = 't'): Input<number> {
  return {
    symbol,
    meaning: 'temperature of the zone',
    dimension: 'temperature',
    reads: ['circuit/zone', 'build/zones', 'build/ambient'],
    read: scope => readTemperature(symbol, scope),
  }
}

function readTemperature(symbol: string, scope: Scope): Found | null {
  const { subject, record, notebook } = scope
  const zone = subject.thing === null ? null : usedWords(scope, subject.thing, 'zone')
  const target = targetOf(record.settings, zone === null ? 'ambient' : `zones.${zone}`)
  const meaning = zone === null ? 'temperature around, where no zone is named' : `temperature of ${zone}`
  if (target.held !== null) return figureAt(target, { symbol, meaning, dimension: 'temperature', unit: 'degC' }, scope)
  notebook.need(target.path, `${meaning} is not written`)
  return null
}
