import type { Element, ElementContent } from 'hast'
import type { MarkedPlaceNode } from '../../plugins/marked-places/node.ts'
import { words } from './note-handlers.ts'

/** A mark that says where its point lies. */
export type Point = MarkedPlaceNode & { readonly at: NonNullable<MarkedPlaceNode['at']> }

/** Numbers of one size on a picture of any: each lies at its share of the frame. */
export function pointOverlay(points: readonly Point[]): Element {
  const drawn = points.map(({ number, at }) =>
    element('svg', { x: `${at.left}%`, y: `${at.top}%`, className: ['pt-at'] }, [
      element('circle', { r: String(radius + 3), className: ['pt-halo'] }, []),
      element('circle', { r: String(radius), className: ['pt-disc'] }, []),
      element('text', { className: ['pt-n'] }, [words(String(number))]),
    ]),
  )
  return element('svg', { className: ['points'], ariaHidden: 'true', focusable: 'false' }, drawn)
}

const radius = 12 // CSS pixels

/** `2: 40 % from the left, 25 % from the top`, for who cannot see the picture. */
export function pointList(points: readonly Point[], order: number): Element {
  const lines = points.map(({ number, at }) =>
    element('li', { id: `pt-${order}-${number}` }, [
      element('a', { href: `#pm-${order}-${number}` }, [words(String(number))]),
      words(`: ${at.left} % from the left, ${at.top} % from the top`),
    ]),
  )
  return element('ul', { className: ['points'], ariaLabel: 'Points on the picture' }, lines)
}

/** An element of HTML or SVG. */
export function element(tagName: string, properties: Element['properties'], children: ElementContent[]): Element {
  return { type: 'element', tagName, properties, children }
}
