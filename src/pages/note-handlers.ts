import type { Element, ElementContent } from 'hast'
import type { Html, Image, ListItem, Nodes, Parents } from 'mdast'
import { defaultHandlers, type Options } from 'remark-rehype'
import type { ConnectorNode } from '../../plugins/connector/node.ts'
import type { FigureNode } from '../../plugins/figures/node.ts'
import type { MarkedPlaceNode } from '../../plugins/marked-places/node.ts'
import type { MeasureNode } from '../../plugins/measure/node.ts'
import type { PrivateBlockNode, PrivateNode } from '../../plugins/private/node.ts'
import type { QuantityNode } from '../../plugins/quantities/node.ts'
import { typeset } from './typeset.ts'

type Handlers = NonNullable<Options['handlers']>
type State = Parameters<NonNullable<Handlers['html']>>[0]

const element = (tagName: string, properties: Element['properties'], children: ElementContent[]): Element => ({
  type: 'element',
  tagName,
  properties,
  children,
})

/** Words without mark-up as HTML nodes. */
export const words = (value: string): ElementContent => ({ type: 'text', value })

/** Not seen in a ring, but read where the words are quoted. */
const hidden = (value: string): Element => element('span', { className: ['vh'] }, [words(value)])

/** How each node of `plugins/` becomes HTML. What links need of the record is put in later. */
export const noteHandlers: Handlers = {
  html: (state: State, node: Html, parent: Nodes | undefined) =>
    isBlockParent(parent)
      ? placed(state, node, element('p', { className: ['raw'] }, [words(node.value)]))
      : words(node.value),
  quantity: (_state: State, node: QuantityNode) =>
    element('span', { className: ['q'], ...(node.id === undefined ? {} : { id: node.id }) }, figureRuns(node.value)),
  measure: (state: State, node: MeasureNode) => state.all(node as never),
  private: (state: State, node: PrivateNode) =>
    element('span', { className: ['private'], dataAs: node.as }, inside(state, node)),
  privateBlock: (state: State, node: PrivateBlockNode) =>
    placed(
      state,
      node,
      element(
        'div',
        { className: ['private'], dataAs: node.as },
        state.wrap(inside(state, node), true) as ElementContent[],
      ),
    ),
  connector: (state: State, node: ConnectorNode) =>
    placed(
      state,
      node,
      element('div', { className: ['connector'] }, state.wrap(connectorParts(state, node), true) as ElementContent[]),
    ),
  markedPlace: (_state: State, node: MarkedPlaceNode) =>
    element('span', { className: ['mk'], dataMark: `${node.picture ?? 0}:${node.number}` }, [
      hidden('('),
      words(String(node.number)),
      hidden(')'),
    ]),
  image: pictureElement,
  figure: (state: State, node: FigureNode) => placed(state, node, figureElement(state, node)),
  listItem: jobItem,
}

/** A figure's runs, units marked. */
function figureRuns(text: string): ElementContent[] {
  return typeset(text).map(run =>
    run.unit ? element('span', { className: ['u'] }, [words(run.text)]) : words(run.text),
  )
}

/** A picture that bears marks is known by its number, for the step that puts them on it. */
function pictureElement(state: State, node: Image): Element {
  const made = defaultHandlers.image(state, node)
  if (node.data?.picture !== undefined) made.properties.dataPicture = String(node.data.picture)
  return made
}

/** A job item bears its identifier, for the step that knows how jobs stand. */
function jobItem(state: State, node: ListItem, parent: Parents | undefined): Element {
  const made = defaultHandlers.listItem(state, node, parent)
  if (node.data?.job !== undefined) made.properties.dataJob = node.data.job.id
  return made
}

/** A block keeps the place of its node: its anchor is named by it. */
function placed(state: State, node: object, made: Element): Element {
  state.patch(node as never, made)
  return made
}

function inside(state: State, node: { readonly type: string; readonly children: unknown[] }): ElementContent[] {
  return state.all(node as never)
}

function isBlockParent(parent: Nodes | undefined): boolean {
  return (
    parent === undefined ||
    ['root', 'blockquote', 'listItem', 'footnoteDefinition', 'connector', 'privateBlock'].includes(parent.type)
  )
}

/** `stalk-switch mates column-loom`, above the table of its pins. */
function connectorParts(state: State, node: ConnectorNode): ElementContent[] {
  const title = [node.name ?? node.id, node.mates === null ? null : `mates ${node.mates}`, node.rating]
  const heading = title.filter(part => part !== null).join(', ')
  return heading === ''
    ? inside(state, node)
    : [element('p', { className: ['caption'] }, [words(heading)]), ...inside(state, node)]
}

function figureElement(state: State, node: FigureNode): Element {
  const picture = inside(state, { ...node, children: node.children.map(image => ({ ...image, title: null })) })
  const caption = node.caption === null ? [] : [element('figcaption', {}, [words(node.caption)])]
  return element('figure', {}, [...picture, ...caption])
}
