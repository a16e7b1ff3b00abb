import type { Element, ElementContent, Root } from 'hast'

/** What our pages add to plain Markdown on purpose. Each undoing is one rule of the format; nothing else may differ. */
const rules: Readonly<Record<string, (node: Element) => ElementContent[] | null>> = {
  'sentences and figures stand in spans of their own': node =>
    node.tagName === 'span' && hasClass(node, /^(s|q|u|used|k\d+)$/) ? node.children : null,
  'a block bears the line on which it begins': node => {
    if (/^b-\d+$/.test(String(node.properties.id ?? ''))) delete node.properties.id
    return null
  },
  'headings have an anchor': node => {
    if (/^h[1-6]$/.test(node.tagName)) delete node.properties.id
    return null
  },
  'a picture alone is a figure': node =>
    node.tagName === 'figure'
      ? [
          {
            ...node,
            tagName: 'p',
            children: node.children
              .filter(child => child.type === 'element' && child.tagName === 'img')
              .map(putTitle(node)),
          },
        ]
      : null,
  'tables keep their roles on a phone': node => {
    if (!/^(table|thead|tbody|tr|th|td)$/.test(node.tagName)) return null
    const align = hasClass(node, /^num$/) ? 'right' : hasClass(node, /^mid$/) ? 'center' : null
    node.properties = align === null ? {} : { align }
    return null
  },
  'a tick box is drawn': node =>
    node.tagName === 'span' && hasClass(node, /^box$/)
      ? [
          {
            ...node,
            tagName: 'input',
            properties: { type: 'checkbox', disabled: true, ...(hasClass(node, /^done$/) ? { checked: true } : {}) },
          },
        ]
      : null,
  'lists of jobs have a class, and their jobs an anchor': node => {
    if (/^(li|ul|ol)$/.test(node.tagName)) {
      delete node.properties.className
      if (String(node.properties.id ?? '').startsWith('j-')) delete node.properties.id
    }
    return null
  },
}

/** Takes back all that the named rules add. Changes the tree. */
export function undoNamedRules(tree: Root): Root {
  tree.children = tree.children.flatMap((child): Root['children'] => (child.type === 'element' ? undo(child) : [child]))
  return tree
}

function undo(node: Element): ElementContent[] {
  node.children = node.children.flatMap(child => (child.type === 'element' ? undo(child) : [child]))
  for (const rule of Object.values(rules)) {
    const instead = rule(node)
    if (instead !== null) return instead
  }
  return [node]
}

function hasClass(node: Element, pattern: RegExp): boolean {
  const names = node.properties.className
  return Array.isArray(names) && names.some(name => pattern.test(String(name)))
}

/** The caption of a figure was the title of its picture. */
function putTitle(figure: Element): (image: ElementContent) => ElementContent {
  const caption = figure.children.find(
    (child): child is Element => child.type === 'element' && child.tagName === 'figcaption',
  )
  const title = caption?.children.map(child => (child.type === 'text' ? child.value : '')).join('')
  return image =>
    image.type === 'element' && title !== undefined ? { ...image, properties: { ...image.properties, title } } : image
}
