import type { Element, ElementContent, Root as Html } from 'hast'
import type { Nodes, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import type {} from '../../plugins/marked-places/node.ts'
import { eachElement, hasClass } from './elements.ts'
import { element, type Point, pointList, pointOverlay } from './point-drawing.ts'

/** Draws the points of marked places on their pictures, tells below each where they lie, and joins their numbers in the text to them. */
export function placePoints(tree: Html, body: Root): void {
  const points = pointsOf(body)
  const orders = placeOn(tree, points)
  const named = new Set<string>()
  eachElement(tree, node => {
    if (typeof node.properties.dataMark === 'string') nameMark(node, { points, orders, named })
    return undefined
  })
}

/** By the picture's number: its points in the order of their own. */
function pointsOf(body: Root): Map<number, readonly Point[]> {
  const points = new Map<number, Point[]>()
  visit(body, (node: Nodes) => {
    if (node.type !== 'markedPlace' || node.picture === null || node.at === null) return
    points.set(node.picture, [...(points.get(node.picture) ?? []), { ...node, at: node.at }])
  })
  for (const own of points.values()) own.sort((a, b) => a.number - b.number)
  return points
}

/** Draws on every picture that has points; gives for each its place among them, by which anchors are named. */
function placeOn(tree: Html, points: ReadonlyMap<number, readonly Point[]>): Map<number, number> {
  const orders = new Map<number, number>()
  const within = (parent: Html | Element, ancestors: readonly (Html | Element)[]): void => {
    for (const child of [...parent.children]) {
      if (child.type !== 'element') continue
      if (child.tagName === 'img') drawOn(child, [...ancestors, parent])
      else within(child, [...ancestors, parent])
    }
  }
  const drawOn = (image: Element, ancestors: readonly (Html | Element)[]): void => {
    const key = Number(image.properties.dataPicture)
    delete image.properties.dataPicture
    const own = points.get(key)
    if (own === undefined) return
    orders.set(key, orders.size + 1)
    putPlate(image, ancestors, own)
    putList(ancestors, pointList(own, orders.size))
  }
  within(tree, [])
  return orders
}

/** The picture with its link, and the points over it, which leave the link to the pointer. */
function putPlate(image: Element, ancestors: readonly (Html | Element)[], points: readonly Point[]): void {
  const depth = ancestors.findIndex(
    around => around.type === 'element' && (around.tagName === 'picture' || hasClass(around, 'large')),
  )
  const inner = (depth < 0 ? image : ancestors[depth]) as Element
  const parent = ancestors[depth < 0 ? ancestors.length - 1 : depth - 1]
  if (parent === undefined) return
  const plate = element('span', { className: ['plate'] }, [inner, pointOverlay(points)])
  parent.children = parent.children.map(child => (child === inner ? plate : child)) as ElementContent[]
}

/** Below the picture: in its figure, behind its paragraph, else at the end of what holds it. */
function putList(ancestors: readonly (Html | Element)[], list: Element): void {
  const at = ancestors.findLastIndex(around => around.type === 'element' && homes.has(around.tagName))
  const home = ancestors[at]
  if (home?.type !== 'element') return
  if (home.tagName === 'figure') {
    captionOf(home).children.push(list)
    return
  }
  if (!/^(?:p|h\d)$/.test(home.tagName)) {
    home.children.push(list)
    return
  }
  const parent = ancestors[at - 1]
  if (parent === undefined) return
  const own = parent.children as ElementContent[]
  own.splice(own.indexOf(home) + 1, 0, list)
}

/** A caption stands first or last in its figure, so the list is a part of it. */
function captionOf(figure: Element): Element {
  const found = figure.children.find(
    (child): child is Element => child.type === 'element' && child.tagName === 'figcaption',
  )
  if (found !== undefined) return found
  const made = element('figcaption', {}, [])
  figure.children.push(made)
  return made
}

const homes = new Set(['figure', 'p', 'td', 'th', 'li', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'dd'])

interface Naming {
  readonly points: ReadonlyMap<number, readonly Point[]>
  readonly orders: ReadonlyMap<number, number>
  /** Anchors given so far. */
  readonly named: Set<string>
}

/** A number in the text leads to its point; the first of each is where the point leads back to. */
function nameMark(mark: Element, { points, orders, named }: Naming): void {
  const [picture, number] = String(mark.properties.dataMark).split(':').map(Number)
  delete mark.properties.dataMark
  const order = orders.get(picture ?? 0)
  const isPoint = points.get(picture ?? 0)?.some(point => point.number === number) ?? false
  if (order === undefined || !isPoint) return
  const id = `pm-${order}-${number}`
  mark.tagName = 'a'
  mark.properties.href = `#pt-${order}-${number}`
  mark.properties.ariaLabel = `point ${number} on the picture`
  if (!named.has(id)) mark.properties.id = id
  named.add(id)
}
