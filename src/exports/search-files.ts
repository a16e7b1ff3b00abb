import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { SearchIndex } from '../search/search-index.ts'
import type { PublishedFile } from './publish-folder.ts'

const notice = '/* Made from src/search of oddleg. Holds MiniSearch, (c) Luca Ongaro, MIT licence. */'

/** What the search page loads: the index and the query, each a classic script, so that it works from a disk and under the policy. */
export async function searchFiles(index: SearchIndex): Promise<PublishedFile[]> {
  return [
    { path: 'client/search-index.js', content: indexScript(index) },
    { path: 'client/search-query.js', content: await queryScript() },
  ]
}

/** JSON in a string is read faster than a literal of the same size. */
function indexScript(index: SearchIndex): string {
  return `globalThis.oddlegIndex=JSON.parse('${JSON.stringify(index).replace(/[\\']/g, '\\$&')}')\n`
}

let made: Promise<string> | null = null

/** The query as the command runs it, bundled once a process. */
function queryScript(): Promise<string> {
  made ??= bundle()
  return made
}

async function bundle(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL('../search/query.ts', import.meta.url))],
    bundle: true,
    minify: true,
    format: 'iife',
    globalName: 'oddlegSearch',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    banner: { js: notice },
    write: false,
    logLevel: 'silent',
  })
  const [script] = outputFiles
  if (script === undefined) throw new Error('Unexpected bundle without a file, expected the query as one script')
  return script.text
}
