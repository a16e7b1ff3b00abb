import { defineConfig } from 'vitest/config'

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source', 'node'] } },
  test: { include: ['tests/**/*.test.{ts,tsx}'], env: { TZ: 'UTC' }, testTimeout: 30_000, hookTimeout: 120_000 },
})
