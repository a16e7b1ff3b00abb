/** Waits for Ctrl-C or an end that is asked for politely. */
export function untilStopped(): Promise<void> {
  return new Promise(resolve => {
    process.once('SIGINT', () => resolve())
    process.once('SIGTERM', () => resolve())
  })
}
