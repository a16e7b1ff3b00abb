import { type Folder, textOf } from './folder.ts'
import { escapeWords, rewriteTags, startTag } from './tags.ts'

/** The first page: what it is, a drawing of it where the overview has one, which edition, how to tell that it is the one. */
export function coverPage(folder: Folder): string {
  const overview = textOf(folder, 'index.html') ?? ''
  const [, before = ''] = /<main\b[^>]*>([\s\S]*?)<h2\b/.exec(overview) ?? []
  const [lede = ''] = /<p class="lede">[\s\S]*?<\/p>/.exec(before) ?? []
  const [drawing = ''] = /<svg\b[\s\S]*?<\/svg>/.exec(/<figure>[\s\S]*?<\/figure>/.exec(before)?.[0] ?? '') ?? []
  const [warning = ''] = /<p class="warning">[\s\S]*?<\/p>/.exec(before) ?? []
  const [block = ''] =
    /<dl>[\s\S]*?<\/dl>/.exec(/<footer class="block">[\s\S]*?<\/footer>/.exec(overview)?.[0] ?? '') ?? []
  return `<section class="cover">
<p class="kind">As-built record</p>
<h1 class="h1">${escapeWords(folder.title)}</h1>
${withoutLinks(lede)}${drawing === '' ? '' : `<div class="frame-drawing" aria-hidden="true">${withoutLinks(drawing)}</div>`}
${withoutLinks(warning)}<div class="block"><div class="in">${block}</div></div>
<p class="sum">SHA-256 of record.json, from which all of this is printed: <span>${folder.sum.replace(/(.{8})(?=.)/g, '$1 ')}</span></p>
<p class="approves">Set out by oddleg from the builder’s own notes. It informs and approves nothing: whether the vehicle satisfies is for the inspector, by local codes and licensed practice. Every figure leads back to the session note in which it was written; a later note corrects an earlier one and the earlier stays legible.</p>
</section>\n`
}

/** What is repeated on the cover leads nowhere and takes no anchor of its own. */
function withoutLinks(html: string): string {
  return rewriteTags(html, tag => {
    const { name, isEnd, attributes } = tag
    if (isEnd || attributes.size === 0) return null
    const kept = [...attributes].filter(([key]) => key !== 'id' && (key !== 'href' || name === 'use'))
    return startTag(tag, kept)
  })
}
