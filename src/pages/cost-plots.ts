import { type AmountGroup, type AskedLine, groupLines, type Whereabouts } from '../record/asked/split-ledger.ts'
import { donorKey, systemGroups } from './cost-sums.ts'
import { plain } from './inline.ts'
import { money } from './money.ts'
import { inMoney } from './money-cells.ts'
import { dayNumber, longDate } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { type Bar, drawBars } from './plots/bar-plot.ts'
import { drawMoney, type MoneyStep } from './plots/money-line.ts'
import { noteAddress, subjectAddress } from './thing-addresses.ts'

/** Money paid in all over the days, the sessions marked; the table by session says the same. */
export function moneyOverTime(scope: PageScope, lines: readonly AskedLine[]): PartOfPage[] {
  const { currency } = scope.record.ledger
  const running = new Map(lines.map(({ line, running: total }) => [line.session ?? '', total]))
  let total = running.get('') ?? '0'
  const before = Number(total)
  const steps = scope.record.sessions.flatMap((session): MoneyStep[] => {
    total = running.get(session.id) ?? total
    const day = dayNumber(session.date)
    if (day === null) return []
    const balloon = scope.balloon(session.id)
    const says = `${balloon.says}, ${longDate(session.date)}: ${inMoney(scope, total)} in all`
    return [{ day, total: Number(total), balloon: balloon.text, href: scope.to(noteAddress(session.id)), says }]
  })
  if (steps.length < 2 || lines.length === 0) return []
  const drawn = drawMoney({
    says: 'Money paid in all, over the days of the build',
    tells: `From ${inMoney(scope, before.toFixed(2))} before the first session to ${inMoney(scope, scope.record.ledger.total)} after the last. The table by session says the same.`,
    before,
    steps,
    label: amount => money(String(amount), currency),
  })
  return [
    {
      kind: 'drawings',
      ...drawn,
      caption: [plain('Paid in all, less what came back; a balloon for each session.')],
      framed: false,
    },
  ]
}

/** Money by system: what was paid for what is on the vehicle, for what is not, and what was used up; a line where something came back. */
export function moneyBySystem(scope: PageScope, lines: readonly AskedLine[]): PartOfPage[] {
  const groups = systemGroups(scope, lines)
  if (groups.length < 2) return []
  const bars = groups.map(group => systemBar(scope, group))
  const drawn = drawBars({
    says: 'Money by system',
    tells: bars.map(({ label, text }) => `${label} ${text}`).join(', '),
    bars,
  })
  const key =
    'Full: paid for parts that are on the vehicle, and donors. Hatched: for parts that are not. Empty: materials, tools and services.'
  const crossed = bars.some(({ crossedAt }) => crossedAt !== null) ? ' What lies beyond a cross line came back.' : ''
  return [{ kind: 'drawings', ...drawn, caption: [plain(`${key}${crossed}`)], framed: false }]
}

function systemBar(scope: PageScope, { key, lines, amount }: AmountGroup): Bar & { readonly crossedAt: number | null } {
  const { currency } = scope.record.ledger
  const paid = lines.filter(({ line }) => line.of !== 'returned')
  const places = new Map(
    groupLines(paid, currency, ({ whereabouts }) => whereabouts).map(group => [group.key, Number(group.amount)]),
  )
  const size = (...of: readonly Whereabouts[]): number => of.reduce((sum, place) => sum + (places.get(place) ?? 0), 0)
  const system = scope.record.systems.find(({ id }) => id === key)
  return {
    label: system?.name ?? (key === '' ? 'Of no system' : key === donorKey ? 'Donors' : key),
    href: system === undefined ? null : scope.to(subjectAddress({ kind: 'system', id: key })),
    pieces: [
      { size: size('on the vehicle', 'donor'), look: 'bar' },
      { size: size('not on the vehicle'), look: 'bar hatched' },
      { size: size('used up'), look: 'bar open' },
    ],
    crossedAt: paid.length === lines.length ? null : Math.max(0, Number(amount)),
    text: inMoney(scope, amount),
  }
}
