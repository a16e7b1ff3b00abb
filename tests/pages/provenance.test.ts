import { describe, expect, test } from 'vitest'
import { loadChecks } from '../../src/checker/load-checks.ts'
import { provenanceOf } from '../../src/pages/provenance.ts'

const checks = await loadChecks('src/checks')
const of = (id: string) => {
  const check = checks.find(one => one.id === id)
  if (check === undefined) throw new Error(`Unexpected check \`${id}\`, expected one of src/checks`)
  return provenanceOf(check)
}

describe('where a check has its formula and limits from', () => {
  test.each(checks.map(({ id }) => [id]))('%s names a formula, and who set each limit', id => {
    const { formula, limits } = of(id)
    expect(formula.length).toBeGreaterThan(15)
    expect(limits.filter(({ source }) => source.length < 10)).toEqual([])
  })

  test.each([
    ['tank-mass', []],
    [
      'thread-engagement',
      [
        'ISO 68-1, basic profile: at the outside diameter seven eighths of each pitch are plate, so π d × 7/8 shears for each length; both from memory',
      ],
    ],
    ['lamp-position', ['Heights are of the vehicle unladen on level ground (from memory)']],
    ['prop-shaft-speed', ['common practice, no source: at most three quarters of the critical speed']],
  ])('%s says what of it nobody looked up', (id, unseen) => {
    expect(of(id).unseen).toEqual(unseen)
  })

  test('limits of several aspects that are one stand once, with the aspects named', () => {
    const [front] = of('joint-angles').limits.filter(({ aspects }) => aspects.includes('front'))
    expect(front?.aspects).toEqual(['front', 'rear'])
  })
})
