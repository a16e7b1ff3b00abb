import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { openPress, type Press } from '../../src/paper/press.ts'
import { root } from '../site/published.ts'

/** A press whose browser is unpacked into the project's own scratch space. */
export function openTestPress(limit?: number): Promise<Press> {
  const scratch = join(root, '.tmp')
  mkdirSync(scratch, { recursive: true })
  // The package unpacks itself into the folder that TMPDIR names when it is loaded.
  process.env.TMPDIR = scratch
  return openPress({ browser: undefined, environment: process.env, ...(limit !== undefined && { limit }) })
}
