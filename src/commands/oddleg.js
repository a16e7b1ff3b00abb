#!/usr/bin/env node
// The program runs from its TypeScript source, in a clone and as an installed package alike.
import { fileURLToPath } from 'node:url'
import { register } from 'tsx/esm/api'

register({ tsconfig: fileURLToPath(new URL('../../tsconfig.json', import.meta.url)) })
const { main } = await import('./main.ts')
process.exitCode = await main(process.argv)
