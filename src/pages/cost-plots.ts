import { type AskedLine, groupLines } from '../record/asked/split-ledger.ts'
import { systemGroups } from './cost-sums.ts'
import { plain } from './inline.ts'
import { money } from './money.ts'
import { inMoney } from './money-cells.ts'
import { dayNumber, longDate } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { drawBars } from './plots/bar-plot.ts'
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

/** Money by system: what is on the vehicle, what is not, what was used up. */
export function moneyBySystem(scope: PageScope, lines: readonly AskedLine[]): PartOfPage[] {
  const groups = systemGroups(scope, lines)
  if (groups.length < 2) return []
  const bars = groups.map(({ key, lines: own, amount }) => {
    const places = new Map(
      groupLines(own, scope.record.ledger.currency, ({ whereabouts }) => whereabouts).map(group => [
        group.key,
        Number(group.amount),
      ]),
    )
    const system = scope.record.systems.find(({ id }) => id === key)
    return {
      label: key === '' ? 'of no system' : (system?.name ?? (key.startsWith('(') ? 'Donors' : key)),
      href: system === undefined ? null : scope.to(subjectAddress({ kind: 'system', id: key })),
      pieces: [
        { size: (places.get('on the vehicle') ?? 0) + (places.get('donor') ?? 0), look: 'bar' as const },
        { size: places.get('not on the vehicle') ?? 0, look: 'bar hatched' as const },
        { size: places.get('used up') ?? 0, look: 'bar open' as const },
      ],
      text: inMoney(scope, amount),
    }
  })
  const drawn = drawBars({
    says: 'Money by system',
    tells: bars.map(({ label, text }) => `${label} ${text}`).join(', '),
    bars,
  })
  return [
    {
      kind: 'drawings',
      ...drawn,
      caption: [
        plain(
          'Full: in parts that are on the vehicle, and donors. Hatched: in parts that are not. Empty: materials, tools and services.',
        ),
      ],
      framed: false,
    },
  ]
}
