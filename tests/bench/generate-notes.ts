import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Writes a build of `count` notes of about 450 words, each with a part, measurements, a table and jobs, every tenth with two circuits. Deterministic. */
export function generateNotes(folder: string, count: number): void {
  mkdirSync(join(folder, 'content', 'sessions'), { recursive: true })
  writeFileSync(join(folder, 'content', 'build.md'), buildNote)
  for (let index = 0; index < count; index += 1) {
    const date = new Date(Date.UTC(2020, 0, 1 + index)).toISOString().slice(0, 10)
    writeFileSync(join(folder, 'content', 'sessions', `${date}-session-${index}.md`), sessionNote(index, date))
  }
}

const buildNote = `---
title: Generated build
currency: GBP
gallon: imperial
electrical: { nominal: 12 V, ambient: 30 °C }
systems: { electrical: Electrical, fuel: Fuel, body: Body }
---
A build that no builder made, for timing only.
`

const sentences = [
  'The bracket sits 42 mm from the sill and clears the hose by about 12 mm when the engine rocks.',
  'It took three goes to get the flange square, and the second one went in the bin.',
  'The plate is 3 mm thick and the bolts go to 24 Nm, wiped with oil and turned slowly.',
  'Rain came in under the door, so the floor was swept before the trolley jack went anywhere.',
  'The hose end reads 16.5 mm over the rib and the clip takes up the rest without a groan.',
  'With the lamp on the meter shows 12.4 V at the battery and 11.9 V at the holder.',
  'Nothing else has moved since the last session, which is as it should be.',
  'The spacer came out at 7 3/8 in and lost a sixteenth of an inch to the file.',
  'Two of the captive nuts had to be cut out and drilled through for M8 studs.',
  'Tea, then the other side in half the time, because the drawing was right by then.',
]

function sessionNote(index: number, date: string): string {
  const words = Array.from({ length: 30 }, (_, at) => sentences[(index * 7 + at * 3) % sentences.length])
  const paragraphs = Array.from({ length: 6 }, (_, at) => words.slice(at * 5, at * 5 + 5).join(' '))
  return `${frontMatter(index, date)}
${paragraphs.slice(0, 3).join('\n\n')}

| Measurement | Value | With |
| --- | --- | --- |
| part-${index}/length | ${300 + (index % 50)} mm ± 1 mm | steel tape |
| part-${index}/width | ${120 + (index % 9)} mm ± 1 mm | caliper |

${paragraphs.slice(3).join('\n\n')}

- [x] offer up part ${index}
- [ ] paint part ${index} :job{#paint-${index} before=road}
`
}

function frontMatter(index: number, date: string): string {
  const part = `  part-${index}: { name: "Part ${index}", system: body, action: fitted, cost: £${index % 40}.50, mass: 1.2 kg }`
  const circuits = index % 10 === 0 ? ['circuits:', ...[0, 1].map(at => circuitLine(index, at))] : []
  const head = ['---', `title: Session ${index}`, `date: ${date}`, 'hours: 3.5']
  return [...head, 'parts:', part, ...circuits, '---'].join('\n')
}

const circuitLine = (index: number, at: number): string =>
  `  circuit-${index}-${at}: { system: electrical, use: lighting, load: ${1 + at}.5 A, fuse: 10 A, cable: 1.5 mm² red/white, length: 2.${index % 10} m, return: chassis }`
