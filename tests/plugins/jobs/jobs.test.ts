import { describe, expect, test } from 'vitest'
import jobs from '../../../plugins/jobs/index.ts'
import { bare, run, whole } from '../chain.ts'
import { nodesOf, outline } from '../nodes-of.ts'

const alone = bare().use(jobs).freeze()

const jobsOf = (text: string, chain = alone) =>
  nodesOf(run(chain, text).tree, 'listItem').flatMap(({ data }) => data?.job ?? [])

test('the tasks of a README become jobs, and the mark leaves the words', () => {
  const text = '- [ ] seal the hatch :job{#seal-hatch before=road}\n- [x] Paint the sill\n- no task'
  const { tree, messages } = run(alone, text)
  expect(jobsOf(text)).toMatchObject([
    { id: 'seal-hatch', explicit: true, text: 'seal the hatch', done: false, before: 'road' },
    { id: 'paint-the-sill', explicit: false, text: 'Paint the sill', done: true, before: null, beforePosition: null },
  ])
  expect(outline(tree).filter(line => line.includes('text'))).toEqual([
    '        text "seal the hatch "',
    '        text "Paint the sill"',
    '        text "no task"',
  ])
  expect(messages).toEqual([])
})

test('the places of the words and of `before` are those of the file', () => {
  const text = '- [ ] seal the hatch :job{#seal before=inspection}'
  const [job] = jobsOf(text)
  expect(text.slice(job?.position?.start.offset, job?.position?.end.offset).trim()).toBe('seal the hatch')
  expect(text.slice(job?.beforePosition?.start.offset, job?.beforePosition?.end.offset)).toBe('inspection')
})

describe('an identifier made from the words', () => {
  const identifiers: [words: string, id: string][] = [
    ['seal the engine hatch', 'seal-the-engine-hatch'],
    ['Fit M8 × 1.25 bolts!', 'fit-m8-1-25-bolts'],
    ['Crème brûlée ﬁnish', 'creme-brulee-finish'],
    ['**bold** `code` [link](x)', 'bold-code-link'],
    ['  … trimmed …', 'trimmed'],
    ['½ turn', '1-2-turn'],
    ['Straße fegen', 'stra-e-fegen'],
  ]
  test.each(identifiers)('%s → %s', (words, id) => {
    expect(jobsOf(`- [ ] ${words}`).map(job => job.id)).toEqual([id])
  })

  test('a clash takes -2, then -3; a written identifier keeps its name', () => {
    expect(
      jobsOf('- [ ] wash it\n- [ ] Wash it!\n- [ ] wash: it\n- [ ] other :job{#wash-it-2}').map(job => job.id),
    ).toEqual(['wash-it', 'wash-it-3', 'wash-it-4', 'wash-it-2'])
  })

  test('words in another script differ by their letters and stay the same in the next note', () => {
    const [first, second] = jobsOf('- [ ] 洗车\n- [ ] 喷漆').map(job => job.id)
    expect(first).not.toBe(second)
    expect(jobsOf('- [x] 洗车').map(job => job.id)).toEqual([first])
    expect(first).toMatch(/^job-[a-z0-9]+$/)
  })
})

test('a label of the mark stays as words', () => {
  expect(jobsOf('- [ ] seal :job[the *hatch*]{#seal} now').map(job => job.text)).toEqual(['seal the hatch now'])
})

test('an inner task is a job of its own', () => {
  expect(jobsOf('- [ ] outer\n  - [x] inner :job{#in}\n').map(({ id, text, done }) => [id, text, done])).toEqual([
    ['outer', 'outer', false],
    ['in', 'inner', true],
  ])
})

describe('what a job holds up', () => {
  test.each(['road', 'inspection'])('before=%s is accepted', before => {
    expect(run(alone, `- [ ] a :job{#a before=${before}}`).messages).toEqual([])
  })

  test('another word is told where it stands', () => {
    const { file, messages } = run(alone, '- [ ] a :job{#a before="raod"}')
    expect(messages).toEqual(['1:25-1:29 unknown-value Unexpected `before=raod`, expected `road` or `inspection`'])
    expect(file.messages[0]?.note).toBe('before=road')
    expect(jobsOf('- [ ] a :job{#a before="raod"}').map(job => job.before)).toEqual([null])
  })
})

test('a mark outside a task is told, and stays as typed', () => {
  const { tree, messages } = run(alone, 'a :job[b]{#c} d')
  expect(messages).toEqual([
    '1:3-1:7 directive Unexpected `:job` outside a task, expected it in an item such as `- [ ] seal the hatch :job{#seal-hatch}`',
  ])
  expect(outline(tree)).toEqual(['root', '  paragraph', '    text "a "', '    text ":job[b]{#c}"', '    text " d"'])
})

test('a task whose mark failed is no job: its words are withheld', () => {
  expect(jobsOf('- [ ] ask :privat[Robin]{as=people}\n- [ ] wash', whole).map(job => job.id)).toEqual(['wash'])
})

test('an attribute that a job does not know is told', () => {
  expect(run(alone, '- [ ] a :job{#a befor=road}').messages).toEqual([
    '1:23-1:27 unknown-key Unexpected `befor` of `job`, expected `id`, `before`',
  ])
})
