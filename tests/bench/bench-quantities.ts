import { performance } from 'node:perf_hooks'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { plainReading } from '../../src/quantities/quantity.ts'
import { readQuantities } from '../../src/quantities/read-quantities.ts'

const sentences = [
  'The bracket sits 42 mm from the sill and clears the hose by about 12 mm when the engine rocks.',
  'It took three goes to get the flange square, and the second one went in the bin.',
  'The plate is 3 mm thick and the bolts go to 24 Nm, wiped with oil and turned slowly.',
  'Rain came in under the door, so the floor was swept before the trolley jack went anywhere.',
  'With the lamp on the meter shows 12.4 V at the battery and 11.9 V at the holder.',
  'Nothing else has moved since the last session, which is as it should be, and the kettle was on by four.',
  'The spacer came out at 7 3/8 in and lost a sixteenth of an inch to the file.',
  'Tea, then the other side in half the time, because the drawing was right by then.',
]

/** Characters a second of the reader over prose, beside remark-parse alone on the same text in the same run. */
export async function run(): Promise<void> {
  console.log('characters  reader, ms   remark-parse, ms   reader / parse   reader, characters a second')
  for (const paragraphs of [100, 1000, 4000]) {
    const texts = Array.from({ length: paragraphs }, (_, at) => paragraph(at))
    const characters = texts.reduce((sum, text) => sum + text.length, 0)
    const parser = unified().use(remarkParse)
    const [reading, parsing] = inTurn(
      () => read(texts),
      () => parser.parse(texts.join('\n\n')),
    )
    const row = [
      characters,
      reading.toFixed(1),
      parsing.toFixed(1),
      (reading / parsing).toFixed(2),
      Math.round((characters / reading) * 1000).toLocaleString('en'),
    ]
    console.log(row.map((cell, at) => String(cell).padStart([10, 11, 18, 16, 29][at] ?? 10)).join(' '))
  }
}

const paragraph = (at: number): string =>
  Array.from({ length: 5 }, (_, of) => sentences[(at * 5 + of * 3) % sentences.length]).join(' ')

function read(texts: readonly string[]): void {
  for (const text of texts) readQuantities(text, plainReading)
}

/** The medians of both, run in turn so that a machine that drifts slows both. */
function inTurn(one: () => unknown, other: () => unknown): [number, number] {
  const rounds = Array.from({ length: 7 }, () => [timed(one), timed(other)] as const)
  return [median(rounds.map(([time]) => time)), median(rounds.map(([, time]) => time))]
}

function timed(work: () => unknown): number {
  const begun = performance.now()
  work()
  return performance.now() - begun
}

const median = (times: number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0
