/** Shows on a terminal how far the pictures are, when they take over half a second. */
export interface PictureProgress {
  readonly onPicture: (done: number, total: number) => void
  /** Takes the line away again. */
  readonly end: () => void
}

const quietMs = 500 // what is done sooner needs no display
const stopped = 130 // exit status of a program that was ended by Ctrl-C: 128 and the number of SIGINT, by POSIX

/** Begins a display on standard error; with Ctrl-C it says what stands. Silent where nobody watches, and with `json`. */
export function showPictureProgress({ json }: { readonly json: boolean }): PictureProgress {
  const begun = Date.now()
  const isWatched = process.stderr.isTTY === true && !json
  let last = { done: 0, total: 0 }
  let isShown = false
  const onStop = (): never => {
    const { done, total } = last
    const kept = total > 0 ? ` ${done} of ${total} pictures are kept for the next time.` : ''
    process.stderr.write(`\nStopped. The folder is as it was.${kept}\n`)
    process.exit(stopped)
  }
  process.once('SIGINT', onStop)
  return {
    onPicture: (done, total) => {
      last = { done, total }
      if (!isWatched || Date.now() - begun < quietMs) return
      isShown = true
      process.stderr.write(`\r${progressWords(done, total)}`)
    },
    end: () => {
      process.removeListener('SIGINT', onStop)
      if (isShown) process.stderr.write('\n')
    },
  }
}

/** `Pictures 123 of 300, 41 %` */
export function progressWords(done: number, total: number): string {
  return `Pictures ${done} of ${total}, ${total === 0 ? 100 : Math.floor((100 * done) / total)} %`
}
