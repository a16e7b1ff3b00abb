import type { Element, ElementContent, Root } from 'hast'
import type { Picture } from './note-context.ts'

/** Puts a `picture` of all sizes in the place of each `img` of the record; it leads to its large one, unless the note made it a link. */
export function showPictures(tree: Root, pictures: ReadonlyMap<string, Picture>): void {
  showWithin(tree, { pictures, isLinked: false })
}

/** What a link to a picture is called that has no words of its own. */
const largeWords = 'picture, large'

interface Showing {
  readonly pictures: ReadonlyMap<string, Picture>
  readonly isLinked: boolean
}

function showWithin(parent: Root | Element, showing: Showing): void {
  parent.children = parent.children.map(child => {
    if (child.type !== 'element') return child
    if (child.tagName === 'img') return show(child, showing)
    showWithin(child, { ...showing, isLinked: showing.isLinked || child.tagName === 'a' })
    return child
  }) as ElementContent[]
}

function show(image: Element, { pictures, isLinked }: Showing): Element {
  const picture = pictures.get(String(image.properties.src ?? ''))
  if (picture?.sources == null) return image
  const { webp, other, sizes, src } = picture.sources
  const source: Element = {
    type: 'element',
    tagName: 'source',
    properties: { type: 'image/webp', srcSet: webp, sizes },
    children: [],
  }
  image.properties = { ...image.properties, src, srcSet: other, sizes, loading: 'lazy', decoding: 'async' }
  const shown: Element = {
    type: 'element',
    tagName: 'picture',
    properties: {},
    children: webp === '' ? [image] : [source, image],
  }
  if (isLinked) return shown
  const properties: Element['properties'] = { className: ['large'], href: picture.href }
  if (String(image.properties.alt ?? '').trim() === '') properties.ariaLabel = largeWords
  return { type: 'element', tagName: 'a', properties, children: [shown] }
}
