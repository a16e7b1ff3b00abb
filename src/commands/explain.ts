import { fileURLToPath } from 'node:url'
import { closestMatch } from 'leven'
import { loadChecks } from '../checker/load-checks.ts'
import { kinds, propertiesOf } from '../facts/kinds.ts'
import { properties } from '../facts/properties.ts'
import { severityOf } from '../findings/finding.ts'
import { ruleTexts } from '../findings/rule-texts.ts'
import { units } from '../quantities/units.ts'
import { type Explanation, explainCheck, explainChecks } from './explain-check.ts'
import { answersHere } from './explain-here.ts'
import { CannotRun } from './options.ts'

/** `oddleg explain NAME`: what a rule, a check, a kind, a property or a unit means. */
export async function explain(
  name: string,
  { json, build }: { readonly json: boolean; readonly build: string },
): Promise<number> {
  const checks = await loadChecks(fileURLToPath(new URL('../checks', import.meta.url)))
  const known: Record<string, () => Explanation> = { ...rules(), ...ofKinds(), ...ofProperties(), ...ofUnits() }
  for (const check of checks) known[check.id] = () => explainCheck(check)
  known.checks = () => explainChecks(checks)
  const found = Object.hasOwn(known, name) ? known[name] : undefined
  if (found === undefined) throw new CannotRun(notKnown(name, Object.keys(known)))
  const check = checks.find(({ id }) => id === name)
  const here = check === undefined ? [] : await answersHere(check, build)
  const general = found()
  const explanation = { ...general, sections: [...general.sections, ...here] }
  process.stdout.write(
    json ? `${JSON.stringify({ name, ...explanation }, null, 2)}\n` : `${inLines(name, explanation)}\n`,
  )
  return 0
}

function notKnown(name: string, known: readonly string[]): string {
  const near = closestMatch(name, known, { maxDistance: 3 })
  return `Unexpected \`${name}\`, expected the name of a rule, a check, a kind, a property or a unit${near === undefined ? ', such as `voltage-drop`, `unit-slip`, `tank` or `lbf_ft`' : `. Did you mean \`${near}\`?`}`
}

function inLines(name: string, { what, says, sections }: Explanation): string {
  const body = sections.flatMap(({ heading, lines }) => [
    '',
    heading,
    ...lines.flatMap(line => line.split('\n')).map(line => `  ${line}`),
  ])
  return [`${name}: ${what}`, '', says, ...body].join('\n')
}

function rules(): Record<string, () => Explanation> {
  const entries = Object.entries(ruleTexts).map(([rule, text]) => {
    const severity = Object.entries(severityOf).find(([name]) => name === rule)?.[1] ?? 'note'
    const sections = [
      { heading: 'Not', lines: [text.wrong] },
      { heading: 'But', lines: [text.right] },
    ]
    return [rule, (): Explanation => ({ what: `a rule for notes (${severity})`, says: text.means, sections })] as const
  })
  return Object.fromEntries(entries)
}

function ofKinds(): Record<string, () => Explanation> {
  const entries = Object.entries(kinds).map(([kind, { means }]) => {
    const lines = propertiesOf(kind).map(property => `${property}: ${properties[property]?.means ?? ''}`)
    return [
      kind,
      (): Explanation => ({
        what: 'a kind of part',
        says: `${sentence(means)}.`,
        sections: [{ heading: 'Its properties', lines }],
      }),
    ] as const
  })
  return Object.fromEntries(entries)
}

function ofProperties(): Record<string, () => Explanation> {
  const entries = Object.entries(properties).map(([property, { dimensions, means }]) => {
    const holds = dimensions.length === 0 ? 'words' : dimensions.map(dimension => `a ${dimension}`).join(' or ')
    const borne = Object.keys(kinds).filter(kind => kinds[kind]?.properties.includes(property))
    const sections = borne.length === 0 ? [] : [{ heading: 'Kinds that have it', lines: [borne.join(', ')] }]
    return [
      property,
      (): Explanation => ({ what: `a property that holds ${holds}`, says: `${sentence(means)}.`, sections }),
    ] as const
  })
  return Object.fromEntries(entries)
}

function ofUnits(): Record<string, () => Explanation> {
  const entries = units.map(unit => {
    const lines = [`symbol: ${unit.symbol}`, `UCUM: ${unit.ucum ?? 'none'}`, `source: ${unit.source}`]
    const says = `A unit of ${unit.dimension}. In notes: ${[unit.symbol, ...unit.names, ...unit.made].join(', ')}.`
    return [
      unit.id,
      (): Explanation => ({
        what: 'a unit',
        says,
        sections: [{ heading: 'Factor to SI', lines: [unit.factor.toString(), ...lines] }],
      }),
    ] as const
  })
  return Object.fromEntries(entries)
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
