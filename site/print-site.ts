import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import Eleventy from '@11ty/eleventy'
import type { SiteData } from '../src/pages/site-data.ts'

/** A file of the published record, its path relative to the output folder with `/`. */
export interface PrintedFile {
  readonly path: string
  readonly content: string | Uint8Array
}

const folder = fileURLToPath(new URL('.', import.meta.url))

/** Prints all pages in memory, with the style sheets and scripts that they name. Writes nothing. */
export async function printSite(data: SiteData): Promise<PrintedFile[]> {
  const eleventy = new Eleventy(input(), '.', {
    quietMode: true,
    configPath: null,
    source: 'script',
    config: config => configure(config, data),
  })
  const printed = await eleventy.toJSON()
  const addresses = data.pages.map(page => page.sheet.address)
  if (printed.length !== addresses.length)
    throw new Error(`Unexpected ${printed.length} pages printed, expected ${addresses.length}`)
  const pages = printed.map(({ url, content }) => ({ path: pathOf(url), content: `${content}\n` }))
  return [...pages, ...filesOf('styles'), ...filesOf('client')].sort((a, b) => (a.path < b.path ? -1 : 1))
}

/** Eleventy takes paths from the folder in which the program was started. */
function input(): string {
  const path = relative(process.cwd(), folder)
  return path === '' ? '.' : path.split(sep).join('/')
}

function configure(config: Eleventy.Config, data: SiteData): void {
  config.setUseGitIgnore(false)
  // As an installed package these pages lie inside node_modules, which Eleventy would pass over.
  config.ignores.clear()
  config.ignores.add(`${input()}/_includes/**`)
  config.setTemplateFormats(['11ty.tsx'])
  config.addExtension('11ty.tsx', {
    key: '11ty.js',
    compile() {
      return async function (this: Eleventy.Template, given: unknown) {
        return String(await this.defaultRenderer(given))
      }
    },
  })
  config.addGlobalData('site', () => data)
}

function pathOf(url: string | false): string {
  if (url === false) throw new Error('Unexpected page without an address')
  return url.slice(1).replace(/\/$/, '/index.html').replace(/^$/, 'index.html')
}

function filesOf(part: string): PrintedFile[] {
  return readdirSync(join(folder, part)).map(name => ({
    path: `${part}/${name}`,
    content: readFileSync(join(folder, part, name), 'utf8'),
  }))
}
