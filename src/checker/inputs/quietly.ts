import type { Input } from '../input.ts'
import { Notebook } from '../notebook.ts'
import { withNotebook } from '../scope.ts'

/** An input of a line that only stands beside the answer: where it is lacking, nothing is missing. */
export function quietly(input: Input<number>): Input<number> {
  return {
    ...input,
    isOptional: true,
    read: scope => {
      const notebook = new Notebook()
      const found = input.read(withNotebook(scope, notebook))
      if (found !== null) scope.notebook.takeOver(notebook)
      return found
    },
  }
}
