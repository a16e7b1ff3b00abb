import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { root } from './published.ts'

/** A real Chromium, unpacked into the project's own scratch space. */
export async function openBrowser(): Promise<Browser> {
  const scratch = join(root, '.tmp')
  mkdirSync(scratch, { recursive: true })
  // The package unpacks itself into the folder that TMPDIR names when it is loaded.
  process.env.TMPDIR = scratch
  const [{ default: chromium }, { chromium: launcher }] = await Promise.all([
    import('@sparticuz/chromium'),
    import('playwright-core'),
  ])
  const args = [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-component-update',
    '--disable-sync',
  ]
  return launcher.launch({ executablePath: await chromium.executablePath(), headless: true, args })
}
