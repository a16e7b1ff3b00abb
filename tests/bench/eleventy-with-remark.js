// The public yardstick: Eleventy alone, with remark as its Markdown library, over the same notes.
import { join } from 'node:path'
import Eleventy from '@11ty/eleventy'
import rehypeStringify from 'rehype-stringify'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'

const folder = process.argv[2]
if (folder === undefined) throw new Error('Unexpected absence of a folder, expected one that holds content/')
const pipe = unified().use(remarkParse).use(remarkGfm).use(remarkRehype).use(rehypeStringify).freeze()
process.chdir(folder)
const site = new Eleventy('content/sessions', join(folder, '_plain'), {
  quietMode: true,
  configPath: null,
  config: cfg => {
    cfg.setUseGitIgnore(false)
    cfg.setLibrary('md', { render: async text => String(await pipe.process(text)) })
    cfg.addTransform('shell', content => `<!doctype html><title>Note</title><main>${content}</main>`)
  },
})
await site.write()
