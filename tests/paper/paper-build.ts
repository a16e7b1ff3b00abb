/** A build with something for every chapter of the document: parts, costs, wiring with drawings, checks, jobs, an inspection. */
export const paperBuild: Readonly<Record<string, string>> = {
  'content/build.md': `---
title: "Marram & Co <beach cart>"
summary: A cart for the strand
currency: GBP
systems: { fuel: Fuel, electrical: Electrical }
electrical: { nominal: 12 V, ambient: 30 °C }
earth-points: { left-rear: { count: 4 } }
editions: { inspector: { withhold: [cost] }, club: { withhold: [people] } }
---
What the builder says, with [a page elsewhere](https://example.org/strand).
`,
  'content/sessions/2026-03-07-first-wires.md': `---
title: First wires
date: 2026-03-07
hours: 3
parts: { fuel-tank: { name: Steel tank, kind: tank, system: fuel, action: fitted, cost: £73.50, mass: 11 kg } }
circuits:
  fuel-pump: { system: fuel, use: pump, load: 7 A, fuse: 10 A, cable: 2.5 mm² green/purple, length: 4.8 m, return: chassis, earth: left-rear, loom: body-loom, state: live }
  horn: { system: electrical, use: horn, load: 5 A, fuse: 10 A, cable: 1.5 mm² red, return: chassis, earth: left-rear, loom: body-loom, state: live }
connectors: { stalk-switch: { pins: { 1: { wire: 0.75 mm² white/black, to: lamp } } } }
---
The tank is :measure[860 mm ± 2 mm]{of="fuel-tank/length" with="steel tape"} long. :private[Ann]{as=people} held it.

- [ ] seal the hatch :job{#seal-hatch before=road}
`,
  'content/sessions/2026-03-14-second-look.md': `---
title: Second look
date: 2026-03-14
---
Nothing was changed; see [the first](session:2026-03-07-first-wires).
`,
  'content/inspection.yaml': `rule: Individual approval, invented
points:
  tank-held: { ask: Is the tank held?, evidence: [ "part:fuel-tank" ], before: inspection }
`,
}
