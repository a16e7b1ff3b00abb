import { expect, test } from 'vitest'
import { publicationOf, readBuildFolder } from '../../src/build.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import { scratch, smallBuild, smallNote, writeFiles } from '../commands/run-oddleg.ts'

const speedometer = `---
title: A run beside a friend
date: 2026-03-14
parts: { dial: { kind: speedometer, indicated-speed: 70 km/h, true-speed: 50 km/h } }
---
`

/** The words of the pages of a build with one limit of its own. */
async function wordsOf(limit: string): Promise<string> {
  const folder = scratch('law')
  const build = smallBuild.replace('title: Small build', `title: Small build\nlimits: { ${limit} }`)
  writeFiles(folder, {
    'content/build.md': build,
    'content/sessions/2026-03-07-first.md': smallNote,
    'content/sessions/2026-03-14-run.md': speedometer,
  })
  const built = await readBuildFolder(folder, { today: '2026-04-01' })
  if ('trouble' in built) throw new Error(built.trouble)
  const { record, verdicts, findings, inspection } = publicationOf(built, 'full')
  const extras = {
    findings,
    inspection,
    checks: built.checks,
    measureNext: [],
    photos: [],
    date: null,
    serve: false,
    scripts: [],
  }
  return JSON.stringify(makeSiteData(record, verdicts, extras))
}

const lawStands = 'A builder’s own limit does not change what the law asks'

test('where the builder goes past a limit of law, the page says that the law stands (UN R39 5.4)', async () => {
  expect(await wordsOf('speedometer: { max: 25 km/h, why: field use only }')).toContain(lawStands)
})

test('where the builder changes a limit of practice, nothing is said of a law', async () => {
  expect(await wordsOf('voltage-drop/pump: { max: 2 %, why: my own target }')).not.toContain(lawStands)
})
