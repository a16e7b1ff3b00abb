import type { Leaf } from './leaf.ts'
import { wordsOf } from './tags.ts'

/** The anchor of the page of cautions. */
export const cautionsAnchor = 'cautions'

/** Every caution of the pages once, to be read before the rest. */
export function cautionsPage(leaves: readonly Leaf[]): string {
  const found = leaves.flatMap(({ html }) => [...html.matchAll(/<p class="caution">([\s\S]*?)<\/p>/g)])
  const said = [...new Set(found.map(([, words = '']) => wordsOf(words)))]
  const list = said.map(words => `<li>${words}</li>\n`).join('')
  return `<section class="cautions" id="${cautionsAnchor}"><h1 class="h1">Read this first</h1>
<p class="lede">Work on a vehicle can hurt you and those around it. These are the cautions of the pages that follow, each once.</p>
<p>What a page says informs; it approves nothing. Where it touches fuel, brakes, steering, welding, lifting or wiring, local codes and licensed practice decide.</p>
<ul>\n${list}</ul></section>\n`
}
