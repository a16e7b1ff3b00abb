import type { Subject } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'
import { type DeclaredNames, otherKinds } from './declared-names.ts'
import { listVolumes } from './list-volumes.ts'
import { asConnector, asFuseBox } from './list-wiring.ts'
import { compareText } from './order-sessions.ts'
import type { PropertyStore } from './property-store.ts'
import type { AsBuiltRecord, Part, Thing } from './record.ts'

export type Things = Pick<
  AsBuiltRecord,
  | 'settings'
  | 'vehicle'
  | 'circuits'
  | 'connectors'
  | 'looms'
  | 'fuseBoxes'
  | 'earthPoints'
  | 'donors'
  | 'systems'
  | 'volumes'
  | 'measured'
>

/** Everything but the parts: by identifier, systems in the order of build.md. `fence`: where what nobody wrote is said to be. */
export function listThings(
  names: DeclaredNames,
  store: PropertyStore,
  { parts, fence }: { parts: readonly Part[]; fence: Place },
): Things {
  const declared = (kind: Subject['kind']): Thing[] =>
    [...names.of(kind)].map(([id, place]) => store.thing(names.home({ kind, id }), { kind, id }, place))
  const byId = (kind: Subject['kind']): Thing[] => declared(kind).sort((one, other) => compareText(one.id, other.id))
  const builtIn = (kind: 'vehicle' | 'build', id: string): Thing => store.thing({ kind, id }, { kind, id }, fence)
  const circuits = byId('circuit')
  return {
    settings: builtIn('build', 'electrical'),
    vehicle: builtIn('vehicle', 'vehicle'),
    circuits,
    connectors: byId('connector').map(asConnector),
    looms: byId('loom'),
    fuseBoxes: parts.filter(({ partKind }) => partKind === 'fuse-box').map(box => asFuseBox(box, circuits)),
    earthPoints: byId('earth-point'),
    donors: byId('donor'),
    systems: declared('system'),
    volumes: listVolumes(store.ids('volume'), store),
    measured: listMeasured(names, store, fence),
  }
}

function listMeasured(names: DeclaredNames, store: PropertyStore, fence: Place): Thing[] {
  return (['part', ...otherKinds] as const).flatMap(kind =>
    store
      .ids(kind)
      .filter(id => !names.of(kind).has(id))
      .sort(compareText)
      .map(id => store.thing({ kind, id }, { kind, id }, fence)),
  )
}
