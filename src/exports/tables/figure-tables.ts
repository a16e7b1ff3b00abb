import type { PublishableRecord } from '../../editions/publishable.ts'
import type { Figure } from '../../facts/stated-note.ts'
import { siSymbol } from '../../quantities/dimensions.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import { tradeCode } from '../../quantities/trade-codes.ts'
import { findUnit } from '../../quantities/units.ts'
import type { Measurement } from '../../record/record.ts'
import { type ExportTable, exportTable, type Field, field } from './export-table.ts'
import { pageField, placeFields, sessionFields } from './place-fields.ts'

/** Every measurement with a name, those that a later note replaced with them. */
export function measurementsTable(record: PublishableRecord): ExportTable {
  return exportTable('measurements', record.measurements, [
    field('path', 'text', ({ path }) => path),
    ...figureFields<Measurement>(({ quantity }) => quantity),
    field('with', 'text', measured => measured.with),
    field('note', 'text', ({ note }) => note),
    ...sessionFields<Measurement>(record, ({ session }) => session),
    field('superseded', 'flag', ({ superseded }) => superseded),
    ...placeFields<Measurement>(({ place }) => place),
    pageField(measured => measured),
  ])
}

interface ProseFigure extends Figure {
  readonly session: string
}

/** Every figure in prose that nobody named. */
export function quantitiesTable(record: PublishableRecord): ExportTable {
  const figures = record.sessions.flatMap(({ id, figures: own }) =>
    own.filter(({ role }) => role === 'prose').map((figure): ProseFigure => ({ ...figure, session: id })),
  )
  return exportTable('quantities', figures, [
    ...figureFields<ProseFigure>(({ quantity }) => quantity),
    ...sessionFields<ProseFigure>(record, ({ session }) => session),
    ...placeFields<ProseFigure>(({ place }) => place),
    pageField(({ session, id }) => ({ session, figure: id })),
  ])
}

function figureFields<R>(of: (row: R) => Quantity): Field<R>[] {
  const isThread = (row: R): boolean => of(row).thread !== null
  return [
    field('as written', 'text', row => of(row).text),
    field('value', 'number', row => (isThread(row) ? null : of(row).number)),
    field('low', 'number', row => of(row).low),
    field('high', 'number', row => of(row).high),
    field('bound', 'text', row => of(row).bound),
    field('unit', 'text', row => of(row).unit),
    field('ucum', 'text', row => findUnit(of(row).unit)?.ucum ?? null),
    field('unece', 'text', row => tradeCode(of(row).unit)),
    field('dimension', 'text', row => of(row).dimension),
    field('si value', 'number', row => of(row).si),
    field('si low', 'number', row => of(row).siLow),
    field('si high', 'number', row => of(row).siHigh),
    field('si unit', 'text', row =>
      of(row).si === null && of(row).siLow === null && of(row).siHigh === null ? null : siSymbol(of(row).dimension),
    ),
    field('plus', 'number', row => of(row).plus),
    field('minus', 'number', row => of(row).minus),
    field('approximate', 'flag', row => of(row).approximate),
  ]
}
