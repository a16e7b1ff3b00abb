import { strFromU8, strToU8, type Unzipped } from 'fflate'

const cell = /<c\b([^>]*[^>/]|)>(.*?)<\/c>/gs // a cell with anything in it (ECMA-376 part 1, 18.3.1.4)

/**
 * The parts of a workbook, in whose sheets a formula without a value stands as its own words, and a fault such as #DIV/0! too:
 * a reader of values would leave both out.
 */
export function tellFormulas(parts: Unzipped): Unzipped {
  return Object.fromEntries(
    Object.entries(parts).map(([name, bytes]) => {
      if (!/^xl\/worksheets\/[^/]+\.xml$/.test(name)) return [name, bytes]
      const text = strFromU8(bytes)
      return /<f[\s/>]|t="e"/.test(text) ? [name, strToU8(text.replace(cell, tellCell))] : [name, bytes]
    }),
  )
}

function tellCell(whole: string, attributes: string, content: string): string {
  const value = /<v[^>]*>([^<]*)<\/v>/.exec(content)?.[1] ?? ''
  const formula = /<f\b[^>]*?(?:\/>|>([^<]*)<\/f>)/.exec(content)
  if (value !== '') return / t="e"/.test(attributes) ? wordsCell(attributes, value) : whole
  return formula === null ? whole : wordsCell(attributes, `=${formula[1] || '(a formula shared with another cell)'}`)
}

/** The words are escaped already, since they were taken from XML. */
const wordsCell = (attributes: string, words: string): string =>
  `<c${attributes.replace(/ t="[^"]*"/, '')} t="str"><v>${words}</v></c>`
