import type { Proposal } from './proposal.ts'

const sections = ['parts', 'spend', 'measurements'] as const

/**
 * Proposals as YAML behind one `#`, under two `#` the words that each came from: with one `#` less on every line all of it is
 * accepted, and the words stay remarks.
 */
export function proposalLines(proposals: readonly Proposal[]): string[] {
  const found = sections.flatMap(section => {
    const own = proposals.filter(proposal => proposal.section === section)
    if (own.length === 0) return []
    return [`#${section}:`, ...(section === 'spend' ? own.flatMap(spendLines) : thingLines(own))]
  })
  return found.length === 0
    ? []
    : ['## Delete the first # of a line to accept it; with its heading, such as parts.', ...found]
}

function spendLines({ keys, said }: Proposal): string[] {
  return [wordsLine(said), `#  - { ${keys.map(([key, value]) => `${key}: ${quotedInFlow(value)}`).join(', ')} }`]
}

const quotedInFlow = (value: string): string =>
  /[,{}[\]]/.test(value) && !value.startsWith('"') ? JSON.stringify(value) : value

/** A thing stands once, whatever is said of it; of a key said twice the last stands, and all the words are kept. */
function thingLines(proposals: readonly Proposal[]): string[] {
  const things = [...new Set(proposals.map(({ thing }) => thing))]
  return things.flatMap(thing => {
    const own = proposals.filter(proposal => proposal.thing === thing)
    const keys = new Map(own.flatMap(proposal => proposal.keys))
    return [
      ...new Set(own.map(({ said }) => wordsLine(said))),
      `#  ${thing}:`,
      ...[...keys].map(([key, value]) => `#    ${key}: ${value}`),
    ]
  })
}

const wordsLine = (said: string): string => `## “${said.replace(/\s+/g, ' ')}”`
