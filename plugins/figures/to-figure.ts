import type { Paragraph } from 'mdast'
import type { FigureNode } from './node.ts'

/** The figure that a paragraph is when it holds one picture and nothing else; else null. */
export function toFigure(paragraph: Paragraph): FigureNode | null {
  const [image, ...others] = paragraph.children.filter(child => child.type !== 'text' || child.value.trim() !== '')
  if (image?.type !== 'image' || others.length > 0) return null
  const figure: FigureNode = { type: 'figure', caption: image.title || null, children: [image] }
  return paragraph.position === undefined ? figure : { ...figure, position: paragraph.position }
}
