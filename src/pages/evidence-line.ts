import { type ThingScheme, thingSchemes } from '../../plugins/things/node.ts'
import type { WeighedEvidence } from '../checker/weigh-inspection.ts'
import { neutralMark } from '../editions/withheld.ts'
import { sameWords } from '../record/open-items.ts'
import { pageAddress } from './addresses.ts'
import type { Inline, Mark } from './cells.ts'
import { look, plain } from './inline.ts'
import { noteContext } from './note-scope.ts'
import type { PageScope } from './page-scope.ts'
import { spaced } from './page-scope.ts'
import { noteAddress, verdictAddress, wordsAddress } from './thing-addresses.ts'

interface EvidenceLine {
  readonly mark: Mark
  readonly words: readonly Inline[]
}

/** What stands for evidence that the edition leaves out: neither its kind nor its name. */
const notShown = 'withheld in this edition'

/** One piece of evidence: whether it holds, what it is, where it is written, and the day of that note. */
export function evidenceLine(scope: PageScope, evidence: WeighedEvidence): EvidenceLine {
  const mark: Mark = { verdict: evidence.ok ? 'pass' : 'missing', text: evidence.ok ? 'held' : 'open', href: null }
  if (evidence.ref === neutralMark) return { mark, words: [look('muted', notShown)] }
  const { words, session } = (leads[evidence.scheme] ?? toThing)(scope, evidence)
  const date = session === null ? '' : (scope.atlas.sessions.get(session)?.date ?? '')
  return {
    mark,
    words: [plain(`${spaced(evidence.scheme)} `), ...words, ...(date === '' ? [] : [look('muted', `, ${date}`)])],
  }
}

interface Lead {
  readonly words: readonly Inline[]
  /** The note that says so. */
  readonly session: string | null
}

type Leading = (scope: PageScope, evidence: WeighedEvidence) => Lead

const leads: Readonly<Record<string, Leading>> = {
  measurement: (scope, { name }) => {
    const found = scope.record.measurements.findLast(({ path }) => path === name || path === `part:${name}`)
    if (found === undefined) return { words: [plain(name)], session: null }
    const value = plain(found.quantity.text, scope.to(wordsAddress(found)))
    return { words: [plain(`${name} `), value], session: found.session }
  },
  test: (scope, { name }) => {
    const found = scope.record.tests.findLast(({ what }) => sameWords(what, name))
    if (found === undefined) return { words: [plain(name)], session: null }
    return { words: [scope.link(found.what, `${noteAddress(found.session)}#head`)], session: found.session }
  },
  check: (scope, { name }) => {
    const [check = '', ...subject] = name.split('/')
    const only = scope.atlas.verdicts.filter(one => one.check === check && one.subject === subject.join('/'))
    const isKnown = scope.atlas.extras.checks.some(({ id }) => id === check)
    const address = only.length === 1 && only[0] !== undefined ? verdictAddress(only[0]) : pageAddress('checks', check)
    return {
      words: [isKnown ? scope.link(name.split('/').map(spaced).join(', '), address) : plain(name)],
      session: null,
    }
  },
  photo: (scope, { name }) => {
    const { shown, extras } = scope.atlas
    const isMeant = ({ file }: { readonly file: string }): boolean =>
      file === `content/${name}` || file.endsWith(`/${name}`)
    const inNote = shown.find(({ photo }) => isMeant(photo))
    const address = inNote === undefined ? extras.photos.find(isMeant)?.address : noteAddress(inNote.session)
    return {
      words: [address === undefined ? plain(name) : scope.link(name, address)],
      session: inNote?.session ?? null,
    }
  },
  job: (scope, evidence) => {
    const job = scope.record.jobs.find(({ id, text }) => id === evidence.name || text === evidence.name)
    return { ...toThing(scope, { ...evidence, name: job?.id ?? evidence.name }), session: job?.closed?.session ?? null }
  },
  session: (scope, evidence) => {
    const found = scope.record.sessions.find(({ id, date }) => id === evidence.name || date === evidence.name)
    return { ...toThing(scope, evidence), session: found?.id ?? null }
  },
  part: (scope, evidence) => {
    const part = scope.record.parts.find(({ id }) => id === evidence.name)
    return { ...toThing(scope, evidence), session: part?.events.at(-1)?.session ?? null }
  },
}

/** A thing of the record by its name, leading to its page. */
function toThing(scope: PageScope, { scheme, name }: WeighedEvidence): Lead {
  const known = thingSchemes.find((one): one is ThingScheme => one === scheme)
  const note = { session: null, file: scope.record.build.file }
  const found = known === undefined ? null : noteContext(scope, note).thing({ scheme: known, path: name })
  return { words: [found === null ? plain(name) : plain(found.text, found.href)], session: null }
}
