import { writeBuild } from './published.ts'

const circuits = ['horn', 'pump', 'fan', 'wiper']

/** A build with things to measure next and an inspection of twelve points. */
export function smallBuild(): string {
  const note = [
    '---',
    'title: Wires in',
    'date: 2026-03-07',
    'circuits:',
    ...circuits.map(
      name =>
        `  ${name.replace(' ', '-')}: { use: other, load: 5 A, fuse: 10 A, cable: 1.5 mm² red, return: chassis, earth: left, state: live }`,
    ),
    '---',
    '',
    'Four circuits are in and nobody measured how long they are.',
    '',
    '- [ ] measure them :job{#measure-them before=inspection}',
  ]
  const points = Array.from({ length: 12 }, (_, index) => [
    `  point-${index + 1}:`,
    `    ask: Is the wire of the ${circuits[index % circuits.length]} held every hand's breadth, and does it clear what moves?`,
    `    evidence: [ session:2026-03-07-wires, job:measure-them, circuit:${circuits[index % circuits.length]?.replace(' ', '-')} ]`,
    '    before: inspection',
  ])
  return writeBuild({
    'build.md':
      '---\ntitle: Small one\ncurrency: GBP\nelectrical: { nominal: 12 V }\nearth-points: { left: { count: 8 } }\nrequirements: { check:voltage-drop: all circuits }\n---\n\nA small build.\n',
    'sessions/2026-03-07-wires.md': note.join('\n'),
    'inspection.yaml': ['rule: Individual approval, invented', 'points:', ...points.flat()].join('\n'),
  })
}
