import { describe, expect, test } from 'vitest'
import { checkLinks } from './link-check.ts'
import { publish, writeBuild } from './published.ts'
import { readFolder } from './read-folder.ts'

const build = `---
title: "Nasty <script>alert('title')</script>"
summary: "A \\"summary\\" & <img src=x onerror=alert(1)>"
currency: GBP
systems: { fuel: "Fuel <b>system</b>" }
---
Prose with <iframe src="https://example.org"></iframe> in it.
`

const note = `---
title: "Session </title><script>alert(2)</script>"
date: 2026-03-07
hours: 2
parts:
  fuel-tank: { name: "Tank \\"><script>alert(3)</script>", kind: tank, system: fuel, action: fitted, from: "<u>shop</u>", length: 860 mm ± 2 mm, why: "<svg onload=alert(4)>" }
tests:
  - { what: "<script>alert(5)</script>", result: pass }
temporary:
  - { id: clip, what: "javascript:alert(6)", before: road }
---

[one](javascript:alert(7)) [two](data:text/html,x) <img src=x onerror=alert(8)> {{ 7 * 7 }} {% raw %} <%= x %> \${1}

The tank is :measure[860 mm]{of="fuel-tank/length"} <b onclick="alert(9)">long</b>.

| Measurement | Value | Note |
|---|---|---|
| fuel-tank/width | 380 mm | <script>alert(10)</script> |

- [ ] <a href="javascript:alert(11)">seal it</a> before noon
`

describe('a build that means harm', () => {
  const files = readFolder(publish(writeBuild({ 'build.md': build, 'sessions/2026-03-07-a # b.md': note })))
  const pages = files.filter(({ path }) => path.endsWith('.html'))

  test('no script, handler or link of it reaches a page', () => {
    for (const { path, content } of pages) {
      const html = String(content)
      const own = html.replaceAll(/<script src="[./]*client\/[a-z-]+\.js" defer><\/script>/g, '')
      expect(own, path).not.toMatch(/<(script|iframe|u|b|img)\b/)
      expect(own, path).not.toMatch(/<[a-z][^<>]*\son[a-z]+=/i)
      expect(own, path).not.toMatch(/<[a-z][^<>]*\s(href|src)="(javascript|data|vbscript):/i)
    }
  })

  test('template marks of other programs stay as typed', () => {
    const session = pages.find(({ path }) => path.startsWith('sessions/2026'))
    expect(String(session?.content)).toContain(['{{ 7 * 7 }} {% raw %} &#x3C;%= x %> $', '{1}'].join(''))
  })

  test('its words are there all the same, and every link leads somewhere', () => {
    const overview = String(pages.find(({ path }) => path === 'index.html')?.content)
    expect(overview).toContain('<h1>Nasty &#60;script&#62;alert(&#39;title&#39;)&#60;/script&#62;</h1>')
    expect(checkLinks(files)).toEqual([])
  })
})
