// `npm run bench` measures the notes; `npm run bench quantities` and so on what its file says.
import { readdirSync } from 'node:fs'

const known = readdirSync(import.meta.dirname).flatMap(name => /^bench-(.+)\.ts$/.exec(name)?.[1] ?? [])
const asked = process.argv.slice(2)
for (const name of asked.length === 0 ? ['notes'] : asked) {
  if (!known.includes(name)) throw new Error(`Unexpected benchmark \`${name}\`, expected one of ${known.join(', ')}`)
  const { run }: { run: () => Promise<void> } = await import(`./bench-${name}.ts`)
  await run()
}
