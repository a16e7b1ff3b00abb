import type { FormulaLine } from '../formula.ts'
import type { Input } from '../input.ts'

/** What an input made of others reads of the record and of tables, and the lines by which it may be worked; each once. */
export function readsOf(
  inputs: readonly Input[],
  more: readonly string[] = [],
  lines: readonly FormulaLine[] = [],
): Pick<Input, 'reads'> & { tables: string[]; formula: FormulaLine[] } {
  const formula = [...inputs.flatMap(input => input.formula ?? []), ...lines]
  return {
    reads: [...new Set([...more, ...inputs.flatMap(({ reads }) => reads)])],
    tables: [...new Set(inputs.flatMap(({ tables }) => tables ?? []))],
    formula: formula.filter((line, at) => formula.findIndex(other => other.line === line.line) === at),
  }
}
