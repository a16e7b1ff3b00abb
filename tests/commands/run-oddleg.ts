import { spawn, spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'

export const root = resolve(import.meta.dirname, '../..')
const program = join(root, 'src/commands/oddleg.js')

export interface Ran {
  readonly status: number | null
  readonly out: string
  readonly err: string
}

/** Runs the program as a builder would, without colour. */
export function oddleg(args: readonly string[], cwd: string = root): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    cwd,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  })
  return { status, out: stdout, err: stderr }
}

/** Starts the program and leaves it running. */
export function start(args: readonly string[]) {
  return spawn(process.execPath, [program, ...args], { cwd: root, env: { ...process.env, NO_COLOR: '1' } })
}

/** A new folder inside the project's scratch space. */
export function scratch(name: string): string {
  mkdirSync(join(root, '.tmp'), { recursive: true })
  return mkdtempSync(join(root, '.tmp', `${name}-`))
}

/** Writes files of a small build, by their paths. */
export function writeFiles(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), content)
  }
}

export const smallBuild = `---
title: Small build
currency: GBP
systems: { fuel: Fuel, electrical: Electrical }
electrical: { nominal: 12 V, ambient: 30 °C }
---
What it is.
`

export const smallNote = `---
title: First day
date: 2026-03-07
hours: 3
circuits:
  fuel-pump:
    system: fuel
    use: pump
    load: 7 A
    cable: { area: 2.5 mm², colour: green/purple }
    length: 4.8 m
    fuse: 10 A
    return: chassis
    earth: left-rear
---
The tank is :measure[860 mm ± 2 mm]{of="fuel-tank/length"} long.

- [ ] seal the hatch :job{#seal-hatch before=road}
`
