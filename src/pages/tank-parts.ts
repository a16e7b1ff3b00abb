import type { DipMark } from '../checker/derived/dip-table.ts'
import type { Part } from '../record/record.ts'
import { fullShare, levelAt } from './dip-level.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageRow } from './page-row.ts'
import type { PageScope } from './page-scope.ts'
import { drawDip } from './plots/dip-plot.ts'
import { wideRow } from './simple-page.ts'
import { column, heading, row, table, words } from './tables.ts'
import { type CutOut, cutOuts, type TankShape, tankShape } from './tank-shape.ts'
import { drawTank } from './tank-views.ts'

const caution =
  'A tank that holds fuel, or ever held it, is full of vapour that a spark, a lamp or a hot wire lights; an empty one is the worse. Dip it outdoors, away from flame, switches and running engines, with a stick that does not spark. No welding, brazing, grinding or drilling on or near it: first it is drained, cleaned and made free of gas by somebody licensed to, by the local code.'

/** On the page of a tank: three views to scale, and its dip-stick table with its plot. Nothing of a part that is none. */
export function tankRows(scope: PageScope, part: Part): PageRow[] {
  if (part.partKind !== 'tank') return []
  const shape = tankShape(scope.record, part)
  const marks = scope.atlas.extras.dips?.get(part.id) ?? []
  const fullMm = levelAt(marks, fullShare)
  return [
    ...(shape === null ? [] : [wideRow(...views(scope, part, { shape, fullMm }))]),
    ...(marks.length === 0
      ? []
      : [wideRow(dipStick(part, marks, { fullMm, insideLitres: insideLitres(scope, part) }))]),
  ]
}

/** How a shape is taken to lie, as the dip stick reckons it too. */
const lyings = {
  box: 'the front view is along its length',
  cylinder: 'it lies on its side, the front view along its length',
  prism: 'its outline stands upright in the front view, whose dimensions without a balloon are worked out',
} as const

function views(scope: PageScope, part: Part, known: { shape: TankShape; fullMm: number | null }): PartOfPage[] {
  const cuts = cutOuts(scope.record.volumes.find(volume => volume.part === part.id))
  const tank = { name: part.name, cutOuts: cuts, ...known }
  const lead = `To scale, outside, from the figures of its shape; ${lyings[known.shape.form]}. Each dimension leads to the words in which it was written, and the balloon gives the session. Dash and dot: the level at 95 %, height above the inside of the bottom.`
  return [
    heading('Three views', 'views'),
    {
      kind: 'drawings',
      wide: drawTank(scope, tank, true),
      narrow: drawTank(scope, tank, false),
      caption: [plain(lead)],
      framed: false,
    },
    ...(cuts.length === 0
      ? []
      : [cutOutWords(), { kind: 'list' as const, entries: cuts.map((cut, at) => cutOutLine(scope, cut, at)) }]),
  ]
}

function cutOutWords(): PartOfPage {
  return words('note', [
    look('strong', 'Taken off its volume: '),
    plain(
      'as it stands inside. Its place is not written, so it is in none of the three views; it is drawn apart from them, hatched.',
    ),
  ])
}

function cutOutLine(scope: PageScope, { text, held }: CutOut, index: number) {
  const { href, balloon } = scope.leader(text, {
    session: held.session,
    figure: held.figure ?? held.value.figures[0] ?? null,
  })
  return [plain(`${index + 1}: `), plain(text, href), plain(`, ${balloon?.says ?? ''}`)]
}

/** What stands inside altogether, in litres, as the check of its volume worked it out. */
function insideLitres(scope: PageScope, part: Part): number {
  const answer = scope.atlas.verdicts.find(one => one.check === 'tank-volume' && one.subject === part.id)
  const cuts = (answer?.working.steps ?? []).filter(
    ({ symbol, unit }) => symbol.text.startsWith('V_less') && unit === 'L',
  )
  return cuts.reduce((sum, { value }) => sum + value, 0)
}

/** How far the stick may be out, since where a cut-out sits is not written. */
function mayBeOut(litres: number): string {
  return litres === 0
    ? ''
    : ` Where that sits is not written: if any of it sits higher, the tank holds up to ${litresText(litres)} more than the stick tells below it, and the same at the brim.`
}

interface Stick {
  readonly fullMm: number | null
  readonly insideLitres: number
}

function dipStick(part: Part, marks: readonly DipMark[], { fullMm, insideLitres: inside }: Stick): PartOfPage {
  const brim = marks.at(-1)
  const full = fullMm === null ? '' : ` Full, at 95 % of that, the level stands at ${Math.round(fullMm)} mm.`
  const tells = `${litresText(brim?.litres ?? 0)} at the brim, ${millimetres(brim?.heightMm ?? 0)} up.${full}`
  const drawing = drawDip({ says: `What ${part.name} holds by the height of the level`, tells, marks, fullMm })
  return {
    kind: 'beside',
    left: [heading('Dip stick', 'dip'), dipTable(part, marks)],
    right: [
      heading('What the stick tells', 'dip-plot'),
      { kind: 'drawings', wide: drawing, narrow: null, caption: [plain(tells)], framed: false },
      words('note', [
        plain(
          `Worked out from the shape as written, ${inside === 0 ? '' : 'with what is taken off standing on the floor; '}the stick stands upright on the inside of the bottom, the vehicle level.${mayBeOut(inside)} Try it against a measured can before it is trusted.`,
        ),
      ]),
      words('caution', caution),
    ],
  }
}

function dipTable(part: Part, marks: readonly DipMark[]): PartOfPage {
  return table({
    caption: `Dip stick of ${part.name}`,
    columns: [column('Height', 'num'), column('Holds', 'num')],
    rows: marks.map(({ heightMm, litres }) =>
      row([wordsCell(figure(millimetres(heightMm))), wordsCell(figure(litresText(litres)))]),
    ),
  })
}

const millimetres = (mm: number): string => `${Number(mm.toFixed(1))} mm`
const litresText = (litres: number): string => `${litres.toFixed(1)} L`
