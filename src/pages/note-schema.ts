import type { Options } from 'rehype-sanitize'
import { defaultSchema } from 'rehype-sanitize'

const attributes = defaultSchema.attributes ?? {}

/**
 * What may stand in the HTML of a note. A note has no raw HTML, so classes and anchors are ours alone: hence no clobbering,
 * and `n-` before footnotes is given where they are made.
 */
export const noteSchema: Options = {
  ...defaultSchema,
  clobber: [],
  clobberPrefix: '',
  tagNames: [...(defaultSchema.tagNames ?? []), 'figure', 'figcaption'],
  attributes: {
    ...attributes,
    '*': [
      ...(attributes['*'] ?? []),
      'className',
      'id',
      'role',
      'ariaLabel',
      'ariaHidden',
      'scope',
      'dataLabel',
      'dataJob',
      'dataAs',
      'dataMark',
      'dataPicture',
      'tabIndex',
    ],
    a: [...(attributes.a ?? []).filter(rule => !Array.isArray(rule) || rule[0] !== 'className'), 'className'],
    li: ['className', 'id', 'dataJob', 'value'],
    ol: ['className', 'start'],
    ul: ['className'],
    section: ['className', 'dataFootnotes'],
    h2: ['className', 'id'],
    img: ['src', 'alt', 'title', 'width', 'height', 'loading', 'className'],
    input: [],
  },
  protocols: { ...defaultSchema.protocols, href: ['http', 'https', 'mailto', 'tel'] },
}
