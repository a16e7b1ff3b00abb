import { readdirSync, readFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import type { SiteFile } from './link-check.ts'

/** All files of a published folder; pages, styles and scripts as text. */
export function readFolder(folder: string): SiteFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry => join(entry.parentPath, entry.name))
    .sort()
    .map(file => ({
      path: file
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
      content: /\.(html|css|js|json)$/.test(file) ? readFileSync(file, 'utf8') : readFileSync(file),
    }))
}
