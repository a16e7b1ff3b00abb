import type { Column, Table, TableRow } from '../../src/pages/blocks.ts'
import type { Cell, Leader, Mark, WireCell } from '../../src/pages/cells.ts'
import { Draw } from './drawing.tsx'
import { none } from './jsx/jsx-runtime.ts'
import { SizedPicture } from './sized-picture.tsx'
import { BalloonMark, Figure, Shape, VerdictMark, Words } from './words.tsx'

/** A phone shows rows as blocks, and a browser then forgets that they are rows: said again, they stay a table. */
const roles = {
  table: 'table',
  rowgroup: 'rowgroup',
  row: 'row',
  columnheader: 'columnheader',
  rowheader: 'rowheader',
  cell: 'cell',
} as const

/** A table of the tool's: dense on a desk, a list of blocks on a phone, still a table to a screen reader. */
export const DataTable = ({ table }: { readonly table: Table }) => {
  const printed = (
    <table class={table.columns.length > 6 ? 'stack dense' : 'stack'} role={roles.table}>
      <caption class={table.isCaptionShown ? null : 'vh'}>
        {table.caption}
        {table.note === null ? null : <span class="note">{table.note}</span>}
      </caption>
      <thead role={roles.rowgroup}>
        <tr role={roles.row}>
          {table.columns.map(column => (
            <th scope="col" role={roles.columnheader} class={lookOf(column.look)}>
              {column.label}
            </th>
          ))}
        </tr>
      </thead>
      {table.groups.map(group => (
        <tbody role={roles.rowgroup} class={group.heading.length > 0 ? 'group' : null}>
          {group.heading.length === 0 ? null : (
            <tr role={roles.row} class="head">
              <th colspan={table.columns.length} scope="rowgroup" role={roles.rowheader} id={group.id}>
                <Words words={group.heading} />
              </th>
            </tr>
          )}
          {group.rows.map(row => (
            <Row row={row} columns={table.columns} />
          ))}
        </tbody>
      ))}
      {table.foot.length === 0 ? null : (
        <tfoot role={roles.rowgroup}>
          {table.foot.map(row => (
            <Row row={row} columns={table.columns} />
          ))}
        </tfoot>
      )}
    </table>
  )
  return table.canFilter ? <filter-table>{printed}</filter-table> : printed
}

const Row = ({ row, columns }: { readonly row: TableRow; readonly columns: readonly Column[] }) => (
  <tr role={roles.row} id={row.id} class={row.look === 'plain' ? null : row.look}>
    {row.cells.map((cell, index) => {
      const column = columns[index]
      const look = [lookOf(column?.look), isEmpty(cell) ? 'none' : ''].filter(Boolean).join(' ')
      if (index === 0)
        return (
          <th scope="row" role={roles.rowheader} class={look}>
            <InCell cell={cell} />
          </th>
        )
      return (
        <td
          role={roles.cell}
          class={look}
          data-label={column === undefined || column.look === 'wide' || column.look === 'main' ? null : column.label}
        >
          <InCell cell={cell} />
        </td>
      )
    })}
  </tr>
)

/** `wide` columns take room; the name belongs to rows of the page. */
function lookOf(look: Column['look'] | undefined): string {
  return look === undefined || look === 'wide' ? 'roomy' : look === 'main' ? 'figure' : look
}

function isEmpty(cell: Cell): boolean {
  return (
    (cell.kind === 'words' && cell.words.length === 0 && cell.sub.length === 0) ||
    (cell.kind === 'marks' && cell.marks.length === 0 && cell.otherwise === '')
  )
}

const InCell = ({ cell }: { readonly cell: Cell }) => {
  if (cell.kind === 'words')
    return (
      <>
        <Words words={cell.words} />
        <Sub words={cell.sub} />
      </>
    )
  if (cell.kind === 'leader') return <LeaderLine leader={cell.leader} />
  if (cell.kind === 'figure') return <WrittenFigure cell={cell} />
  if (cell.kind === 'marks')
    return cell.marks.length === 0 ? <span class="muted">{cell.otherwise}</span> : <Marks marks={cell.marks} />
  if (cell.kind === 'state')
    return (
      <>
        <span class="st">
          <Shape name={cell.state} />
          <span>{cell.text}</span>
        </span>
        <Sub words={cell.sub} />
      </>
    )
  if (cell.kind === 'wires')
    return (
      <>
        {cell.wires.map(wire => (
          <Wire wire={wire} />
        ))}
      </>
    )
  if (cell.kind === 'balloon')
    return (
      <>
        <BalloonMark balloon={cell.balloon} /> <Words words={cell.words} />
      </>
    )
  if (cell.kind === 'evidence')
    return (
      <ul class="evidence">
        {cell.lines.map(line => (
          <li>
            <VerdictMark mark={line.mark} /> <Words words={line.words} />
          </li>
        ))}
      </ul>
    )
  if (cell.kind === 'drawing') return <Draw drawing={cell.drawing} />
  if (cell.kind === 'thumb')
    return (
      <span class="thumb">
        <SizedPicture src={cell.picture.src} picture={cell.picture} alternative="" />
        <Words words={cell.words} />
      </span>
    )
  return <span class="tickbox" />
}

/** A figure that feeds many answers names a few and keeps the rest to hand. */
const Marks = ({ marks }: { readonly marks: readonly Mark[] }) => {
  const few = marks.length > 5 ? marks.slice(0, 3) : marks
  const rest = marks.slice(few.length)
  return (
    <div class="marks">
      {few.map(mark => (
        <VerdictMark mark={mark} />
      ))}
      {rest.length === 0 ? null : (
        <details>
          <summary>{rest.length} more</summary>
          {rest.map(mark => (
            <VerdictMark mark={mark} />
          ))}
        </details>
      )}
    </div>
  )
}

const WrittenFigure = ({ cell }: { readonly cell: Extract<Cell, { kind: 'figure' }> }) => (
  <span class={cell.href === null ? 'q' : 'q used'} id={cell.anchor}>
    {cell.href === null ? (
      <Figure runs={cell.runs} />
    ) : (
      <a href={cell.href}>
        <Figure runs={cell.runs} />
      </a>
    )}
  </span>
)

const Sub = ({ words }: { readonly words: readonly Parameters<typeof Words>[0]['words'][number][] }) =>
  words.length === 0 ? (
    none
  ) : (
    <span class="sub">
      <Words words={words} />
    </span>
  )

/** The scribed line from a figure to its words: one link, however long the line is. */
export const LeaderLine = ({ leader }: { readonly leader: Leader }) => {
  const inside = (
    <>
      {leader.unit === '' && leader.tolerance === '' ? (
        <span class="whole">
          <Figure runs={leader.runs} />
        </span>
      ) : (
        <>
          <span class="num">{leader.number}</span>
          <span class="u">{leader.unit === '' ? '' : `\u202f${leader.unit}`}</span>
          <span class="tol">{leader.tolerance}</span>
        </>
      )}
      <span class="ln" />
      {leader.balloon === null ? null : (
        <BalloonMark balloon={{ ...leader.balloon, says: `, ${leader.balloon.says}` }} />
      )}
    </>
  )
  return leader.href === null ? (
    <span class={`lead ${leader.line}`}>{inside}</span>
  ) : (
    <a class={`lead ${leader.line}`} href={leader.href}>
      {inside}
    </a>
  )
}

/** A wire drawn as it looks; its colours always stand beside it in words. */
export const Wire = ({ wire }: { readonly wire: WireCell }) => (
  <span class="wire">
    {wire.ground === null ? null : (
      <svg class="swatch" viewBox="0 0 34 10" aria-hidden="true" focusable="false">
        <path class="w case" d="M1 5h32" />
        <path class={`w ${wire.ground}`} d="M2 5h30" />
        {wire.band === null ? null : <path class={`w band ${wire.band}`} d="M6 5h26" />}
      </svg>
    )}
    <span>
      <Words words={wire.words} />
    </span>
  </span>
)
