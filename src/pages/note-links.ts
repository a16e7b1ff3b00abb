import type { Element, ElementContent, Root } from 'hast'
import { type ThingScheme, thingSchemes } from '../../plugins/things/node.ts'
import { eachElement, hasClass, replaceElements } from './elements.ts'
import type { Link, NoteContext, Picture } from './note-context.ts'

/** Turns every link and picture of a note into one that leads somewhere on the published pages, or into its words; gives the pictures by address. */
export function resolveLinks(tree: Root, context: NoteContext): Map<string, Picture> {
  const pictures = new Map<string, Picture>()
  replaceElements(tree, node => {
    if (node.tagName === 'img') return resolvePicture(node, context, pictures)
    if (node.tagName !== 'a' || 'dataFootnoteRef' in node.properties || 'dataFootnoteBackref' in node.properties)
      return null
    const link = target(String(node.properties.href ?? ''), context)
    if (link.text !== '' && node.children.length === 0) node.children = [{ type: 'text', value: link.text }]
    if (link.href === null) return node.children
    node.properties.href = link.href
    return null
  })
  return pictures
}

/** Links figures to what used them, except inside a link of the note: there the note's own stands. */
export function linkFigures(tree: Root, context: NoteContext): void {
  eachElement(tree, node => {
    if (node.tagName === 'a') return 'skip'
    const id = node.properties.id
    if (!isFigure(node) || typeof id !== 'string') return undefined
    const href = context.use(id)
    if (href === null) return 'skip'
    node.properties.className = ['q', 'used']
    node.children = [{ type: 'element', tagName: 'a', properties: { href }, children: node.children }]
    return 'skip'
  })
}

/** Whether an element is a figure of the note, with or without something that used it. */
export function isFigure(node: Element): boolean {
  return node.tagName === 'span' && hasClass(node, 'q')
}

function target(url: string, context: NoteContext): Link {
  const parts = /^([a-z-]+):(?!\/\/)(.+)$/s.exec(url)
  if (parts === null || !isScheme(parts[1] ?? '')) return { text: '', href: context.address(url) }
  const path = decoded(parts[2] ?? '')
  return context.thing({ scheme: parts[1] as ThingScheme, path }) ?? { text: path, href: null }
}

function isScheme(scheme: string): scheme is ThingScheme {
  return (thingSchemes as readonly string[]).includes(scheme)
}

/** A note may hold a stray `%`. */
function decoded(url: string): string {
  try {
    return decodeURIComponent(url)
  } catch {
    return url
  }
}

/** A picture of the record takes its published address; another is its alternative text. */
function resolvePicture(node: Element, context: NoteContext, pictures: Map<string, Picture>): ElementContent[] | null {
  const picture = context.picture(decoded(String(node.properties.src ?? '')))
  if (picture === null) return [missingPicture(node)]
  pictures.set(picture.href, picture)
  node.properties.src = picture.href
  if (picture.width !== null) node.properties.width = picture.width
  if (picture.height !== null) node.properties.height = picture.height
  return null
}

function missingPicture(node: Element): ElementContent {
  const alternative = String(node.properties.alt ?? '')
  return {
    type: 'element',
    tagName: 'span',
    properties: { className: ['no-picture'] },
    children: [{ type: 'text', value: alternative }],
  }
}
