/** A build of two sessions, of which the second changes what the first said. */
export const build = `---
title: Pond skimmer
currency: GBP
systems: { hull: Hull }
electrical: { nominal: 12 V }
---
A flat thing.
`

export const first = `---
title: Keel laid
date: 2026-03-07
hours: 3
parts:
  keel: { system: hull, action: trial-fitted, cost: £40 }
  rope: { action: fitted }
measurements: { keel: { length: 2.4 m }, vehicle: { wheelbase: 900 mm } }
circuits: { pump: { load: 7 A, length: 4.8 m, state: planned } }
temporary: [ { id: string, what: string for a strap, part: keel } ]
---
- [ ] caulk the stern :job{#caulk before=road}
`

export const second = `---
title: Keel on
date: 2026-03-14
hours: 4.5
parts:
  keel: { action: fitted, cost: £45 }
  tiller: { system: hull, action: ordered, cost: £12 }
measurements: { keel: { length: { value: 2.38 m, supersedes: true } } }
circuits: { pump: { load: 7 A, length: 5 m, state: live } }
closes: [ caulk ]
clears: [ string ]
---
- [ ] paint it :job{#paint}
- [x] sweep the floor :job{#sweep}
`
