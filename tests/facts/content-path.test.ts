import { describe, expect, test } from 'vitest'
import { notePath, photoPath } from '../../src/facts/content-path.ts'

const note = 'content/sessions/2026/2026-03-07-tank.md'

describe('addresses in notes', () => {
  test.each([
    ['../../photos/tank.jpg', 'photos/tank.jpg'],
    ['photos/tank.jpg', 'photos/tank.jpg'],
    ['../../photos/tank%20front.jpg', 'photos/tank front.jpg'],
    ['tank.jpg', 'sessions/2026/tank.jpg'],
    ['../../../secret.jpg', '../secret.jpg'],
    ['photos/../../secret.jpg', '../secret.jpg'],
    ['https://example.org/tank.jpg', 'https://example.org/tank.jpg'],
    ['/etc/hosts', '/etc/hosts'],
    ['100%.jpg', 'sessions/2026/100%.jpg'],
  ])('the picture `%s` is `%s` from content/', (address, path) => {
    expect(photoPath(address, note)).toBe(path)
  })

  test.each([
    ['../2026-03-01-floor.md#h-floor', 'sessions/2026-03-01-floor.md'],
    ['2026-03-08-loom.md', 'sessions/2026/2026-03-08-loom.md'],
  ])('the note `%s` is `%s` from content/', (address, path) => {
    expect(notePath(address, note)).toBe(path)
  })
})
