import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { CannotRun, todayOf } from './options.ts'

/** `oddleg init DIR`: a new build that checks clean. Never writes over a file; it cannot run if one is in the way. */
export function init(folder: string, date: string | undefined): number {
  process.stdout.write(makeBuild(folder, todayOf({ date })))
  return 0
}

function makeBuild(folder: string, today: string): string {
  const files: Readonly<Record<string, string>> = {
    'content/build.md': buildNote(today),
    [`content/sessions/${today}-first-session.md`]: firstNote(today),
    'content/photos/.gitkeep': '',
  }
  const inTheWay = Object.keys(files).find(file => existsSync(join(folder, file)))
  if (inTheWay !== undefined || existsSync(join(folder, 'content', 'sessions')))
    throw new CannotRun(
      `\`${join(folder, inTheWay ?? 'content/sessions')}\` exists already: nothing was written. Name another folder.`,
    )
  try {
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(join(folder, file, '..'), { recursive: true })
      writeFileSync(join(folder, file), text, { flag: 'wx' })
    }
  } catch (cause) {
    throw new CannotRun(
      `\`${folder}\` could not be written: ${cause instanceof Error ? cause.message : String(cause)}.`,
      { cause },
    )
  }
  return [
    `A new build lies in ${folder}:`,
    ...Object.keys(files).map(file => `  ${file}`),
    '',
    'Write build.md first, then a note after each session. Next:',
    `  oddleg check --build ${folder}`,
    `  oddleg serve --build ${folder}`,
    '',
  ].join('\n')
}

const buildNote = (today: string): string => `---
title: My build
summary: One sentence that says what it is
started: ${today}
currency: GBP
units: { length: mm, volume: L, mass: kg }
gallon: imperial
electrical:
  nominal: 12 V
  charging: 14.2 V
  ambient: 30 °C
  zones: { engine-bay: 70 °C }
donors:
  donor: { name: "The donor vehicle", cost: £0 }
systems:
  chassis: Chassis
  electrical: Electrical
  fuel: Fuel
requirements: {}
---
What the build is, and why.
`

const firstNote = (today: string): string => `---
title: First session
date: ${today}
hours: 2.5
parts:
  fuel-tank:
    name: "Steel tank"
    kind: tank
    system: fuel
    action: trial-fitted
    from: donor
measurements:
  fuel-tank:
    width: 380 mm ± 2 mm
    height: 300 mm ± 2 mm
    wall: 1.5 mm
---
Write what was done as you would tell it. Figures in the text are found by themselves: the tank weighs about 11 kg empty.

To give a figure a name, wrap it: the tank is :measure[860 mm ± 2 mm]{of="fuel-tank/length" with="steel tape"} long.

- [x] offer the tank up
- [ ] find two straps for it :job{#tank-straps before=road}
`
