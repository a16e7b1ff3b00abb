import { watch } from 'node:fs'
import { join } from 'node:path'

const quietMs = 60 // an editor writes a file in several strokes

/** Calls `changed` once after each burst of changes under `content/`; gives a function that stops watching. */
export function watchContent(buildFolder: string, changed: () => void): () => void {
  let timer: NodeJS.Timeout | undefined
  const watcher = watch(join(buildFolder, 'content'), { recursive: true }, () => {
    clearTimeout(timer)
    timer = setTimeout(changed, quietMs)
  })
  watcher.on('error', () => undefined)
  return () => {
    clearTimeout(timer)
    watcher.close()
  }
}
