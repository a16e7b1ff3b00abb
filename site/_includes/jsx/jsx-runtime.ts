/** A piece of HTML that is safe to print: markup of ours around words that were escaped. */
export class Html {
  readonly value: string
  constructor(value: string) {
    this.value = value
  }
  toString(): string {
    return this.value
  }
}

export type Child = Html | string | number | boolean | null | undefined | readonly Child[]
type Props = Readonly<Record<string, unknown>> & { readonly children?: Child }
type Component = (props: never) => Html

const withoutEnd = new Set([
  'area',
  'base',
  'br',
  'col',
  'embed',
  'hr',
  'img',
  'input',
  'link',
  'meta',
  'source',
  'track',
  'wbr',
])
const attributeName = /^[a-zA-Z][\w:.-]*$/

const escaped = (words: string): string => words.replace(/[&<>"']/g, found => `&#${found.charCodeAt(0)};`)

/** Marks HTML as finished. Only for what `src/pages` has sanitized or made itself. */
export const raw = (html: string): Html => new Html(html)

function print(child: Child): string {
  if (child === null || child === undefined || typeof child === 'boolean') return ''
  if (child instanceof Html) return child.value
  if (typeof child === 'object') return child.map(print).join('')
  return escaped(String(child))
}

function attributes(props: Props): string {
  let text = ''
  for (const [name, value] of Object.entries(props)) {
    if (name === 'children' || value === null || value === undefined || value === false) continue
    if (!attributeName.test(name)) throw new Error(`Unexpected attribute \`${name}\`, expected a name of HTML`)
    text += value === true ? ` ${name}` : ` ${name}="${escaped(String(value))}"`
  }
  return text
}

/** What a component gives that prints nothing. */
export const none = new Html('')

/** One element, or one component called with its properties. Words are escaped, whatever they hold. */
export function jsx(type: string | Component, props: Props): Html {
  if (typeof type === 'function') return (type as (props: Props) => Html)(props)
  const opening = `<${type}${attributes(props)}>`
  return new Html(withoutEnd.has(type) ? opening : `${opening}${print(props.children)}</${type}>`)
}

export const jsxs = jsx
export const Fragment = ({ children }: { readonly children?: Child }): Html => new Html(print(children))

type Attributes = { readonly [name: string]: Child }

export namespace JSX {
  export type Element = Html
  export type ElementType = string | Component
  export interface ElementChildrenAttribute {
    children: unknown
  }
  export interface IntrinsicElements {
    [tag: string]: Attributes
  }
}
