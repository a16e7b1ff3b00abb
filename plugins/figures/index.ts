import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { rewrite } from '../tree/walk.ts'
import { reportAlternatives } from './report-alternatives.ts'
import { resolvePictures } from './resolve-pictures.ts'
import { toFigure } from './to-figure.ts'

export type { FigureNode } from './node.ts'

/** A picture that stands alone becomes a `figure`; one without alternative text becomes a message. */
const figures: Plugin<[], Root> = () => (tree, file) => {
  reportAlternatives(tree, file)
  resolvePictures(tree)
  rewrite(tree, node => {
    const figure = node.type === 'paragraph' ? toFigure(node) : null
    return figure === null ? null : [figure]
  })
}

export default figures
