import type { Element, ElementContent, Root } from 'hast'

type Parent = Root | Element

/** Tells of each element of a tree, parents first; `skip` leaves out what is inside. Elements may be changed on the way. */
export function eachElement(parent: Parent, tell: (element: Element) => 'skip' | undefined): void {
  for (const child of parent.children) if (child.type === 'element' && tell(child) !== 'skip') eachElement(child, tell)
}

/** Puts other nodes in the place of elements; null leaves one as it is. What is put in is looked at too. */
export function replaceElements(parent: Parent, instead: (element: Element) => readonly ElementContent[] | null): void {
  for (let index = 0; index < parent.children.length; ) {
    const child = parent.children[index]
    const other = child?.type === 'element' ? instead(child) : null
    if (other !== null) {
      parent.children.splice(index, 1, ...other)
      continue
    }
    if (child?.type === 'element') replaceElements(child, instead)
    index++
  }
}

/** Whether an element bears a class. */
export function hasClass({ properties }: Element, name: string): boolean {
  const names = properties.className
  return Array.isArray(names) && names.includes(name)
}
