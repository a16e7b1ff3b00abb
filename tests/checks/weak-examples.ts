import type { Check, Example } from '../../src/checker/check.ts'

/** What is weak in a check's examples, in words; a check without a word here has been tried from all sides. */
export function weaknessesOf(check: Check): string[] {
  const { examples } = check
  const said = new Set(examples.map(({ expect }) => expect))
  const wanted = wantedVerdicts(check).filter(word => !said.has(word))
  return [
    ...wanted.map(word => `no example comes out as ${word}`),
    ...twins(examples),
    ...examples.flatMap((example, at) => weaknessOf(check, example).map(weakness => `example ${at + 1} ${weakness}`)),
    ...unknownAspects(check),
  ]
}

/** A working cannot fail; what lies beyond its limit may be marginal only; a check of what is there may have nothing to miss. */
function wantedVerdicts(check: Check): Example['expect'][] {
  const limits = [check.limit, ...Object.values(check.aspects ?? {}).map(({ limit }) => limit)].filter(
    limit => limit !== null,
  )
  const beyond =
    limits.length === 0
      ? []
      : limits.every(limit => limit.beyond === 'marginal')
        ? ['marginal' as const]
        : ['fail' as const]
  return ['pass', ...beyond, ...(check.cannotMiss === undefined ? ['missing' as const] : [])]
}

function twins(examples: readonly Example[]): string[] {
  const keys = examples.map(({ given, aspect }) => JSON.stringify([aspect, Object.entries(given).sort()]))
  return keys.flatMap((key, at) =>
    keys.indexOf(key) < at ? [`example ${at + 1} is example ${keys.indexOf(key) + 1} again`] : [],
  )
}

function weaknessOf(check: Check, { expect, value, missing, source, aspect }: Example): string[] {
  const isMissing = expect === 'missing'
  return [
    ...(source.trim().length < 10 ? ['has no source'] : []),
    ...(isMissing && (missing === undefined || missing.length === 0) ? ['does not say what is missing'] : []),
    ...(isMissing && value !== undefined ? ['is missing and has a value'] : []),
    ...(!isMissing && value === undefined ? ['has no value'] : []),
    ...(!isMissing && missing !== undefined ? ['is not missing and names what is'] : []),
    ...(aspect === undefined && check.aspects !== undefined ? ['names no aspect'] : []),
  ]
}

function unknownAspects({ aspects, examples }: Check): string[] {
  const named = new Set(examples.map(({ aspect }) => aspect))
  const untried = Object.keys(aspects ?? {}).filter(aspect => !named.has(aspect))
  return untried.map(aspect => `no example of the aspect ${aspect}`)
}
