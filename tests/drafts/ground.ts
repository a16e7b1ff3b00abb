import type { DraftGround } from '../../src/drafts/draft-ground.ts'
import { plainReading } from '../../src/quantities/quantity.ts'
import { foldTexts } from '../record/read-texts.ts'

export const build = `---
title: Pond skimmer
currency: GBP
rates: { EUR: 0.86 }
systems: { hull: Hull, drive: Drive }
---
A flat thing.
`

export const note = `---
title: First
date: 2026-03-07
parts:
  fuel-tank: { name: "Stainless tank, made to a drawing", kind: tank, system: drive, action: fitted }
  radiator: { system: drive, action: fitted }
  rear-beam: { name: Rear beam, action: trial-fitted }
---
Nothing.
`

/** The record that a draft is made beside. */
export function ground(): DraftGround {
  const { record } = foldTexts({ build, sessions: { '2026-03-07-first.md': note } })
  return { record, options: plainReading }
}

export const head = { title: 'A draft', date: '2026-03-14', file: 'given.txt' }

/** A note after its builder accepted everything: one `#` less on each line of the front matter. */
export function accepted(text: string): string {
  const end = text.indexOf('\n---\n', 4)
  return text.slice(0, end).replace(/^#/gm, '') + text.slice(end)
}
