import type { Fact, Subject, Words } from '../facts/fact.ts'
import type { AsBuiltRecord, Edition, Limit, Requirement, Test } from './record.ts'
import { splitPath } from './resolve-name.ts'

type Rules = Pick<AsBuiltRecord, 'limits' | 'requirements' | 'askings' | 'editions' | 'inspection' | 'tests'>

/** Limits, requirements, askings, editions, inspection points and tests: a later one of the same name stands, in the place of the first. */
export function foldRules(facts: readonly Fact[], resolve: (path: string) => Subject | null): Rules {
  const limits = new Map<string, Limit>()
  const requirements = new Map<string, Requirement>()
  const askings = new Map<string, Rules['askings'][number]>()
  const editions = new Map<string, Edition>()
  const points = new Map<string, Rules['inspection']['points'][number]>()
  for (const fact of facts) {
    if (fact.type === 'limit') limits.set(`${fact.check}/${fact.of ?? ''}`, limitOf(fact))
    else if (fact.type === 'requirement') requirements.set(fact.path, requirementOf(fact, resolve))
    else if (fact.type === 'asking')
      askings.set(fact.check, { check: fact.check, subjects: fact.subjects, place: fact.place })
    else if (fact.type === 'edition') editions.set(fact.name, { name: fact.name, withhold: fact.withhold })
    else if (fact.type === 'inspection') points.set(fact.id, pointOf(fact))
  }
  const full: Edition[] = editions.has('full') ? [] : [{ name: 'full', withhold: [] }]
  return {
    limits: [...limits.values()],
    requirements: [...requirements.values()],
    askings: [...askings.values()],
    editions: [...editions.values(), ...full],
    inspection: { ...headingOf(facts), points: [...points.values()] },
    tests: facts.filter(fact => fact.type === 'test').map(testOf),
  }
}

type Of<T extends Fact['type']> = Extract<Fact, { type: T }>

function limitOf({ check, of, min, max, why, keyPlace }: Of<'limit'>): Limit {
  return { check, of, min, max, why: why?.text ?? null, whyWords: why, place: keyPlace }
}

function requirementOf(
  { path, value, place }: Of<'requirement'>,
  resolve: (path: string) => Subject | null,
): Requirement {
  const written = splitPath(path)
  return { path, subject: resolve(path), property: written?.property ?? '', value, place }
}

function pointOf({ id, ask, before, evidence, place }: Of<'inspection'>): Rules['inspection']['points'][number] {
  return { id, ask, before, evidence, place }
}

function testOf({ what, result, note, place, session }: Of<'test'>): Test {
  return { what: what.text, words: what, result, note, place, session }
}

/** `rule:` and `authority:` of inspection.yaml, which are settings of the inspection. */
function headingOf(facts: readonly Fact[]): Omit<Rules['inspection'], 'points'> {
  const wordsOf = (key: string): Words | null => {
    const said = facts.filter(fact => fact.type === 'property' && isHeading(fact, key)).at(-1)
    return said?.type === 'property' && said.value.type === 'words' ? said.value.words : null
  }
  const ruleWords = wordsOf('rule')
  return { rule: ruleWords?.text ?? null, ruleWords, authority: wordsOf('authority') }
}

const isHeading = ({ subject, key }: Of<'property'>, name: string): boolean =>
  subject.kind === 'build' && subject.id === 'inspection' && key === name
