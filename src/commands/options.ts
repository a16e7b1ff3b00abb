/** What every command that reads a build takes. */
export interface BuildOptions {
  readonly build: string
  /** ISO 8601; what counts as today. */
  readonly date: string | undefined
  readonly json: boolean
  readonly strict: boolean
}

export interface PublishOptions extends BuildOptions {
  /** From the build folder on; `_site`, or `_tables` where only the tables are published. */
  readonly out: string | undefined
  readonly exportOnly: boolean
  /** With which session the page of changes compares; undefined: the last but one. */
  readonly since: string | undefined
  readonly edition: string
  /** Every edition that build.md names, each to its own folder. */
  readonly allEditions: boolean
  readonly force: boolean
  /** The address at which the record will be published. */
  readonly base?: string
  /** The record as one document too. */
  readonly pdf?: boolean
  /** The program of the browser that prints it. */
  readonly browser?: string
}

/** A command could not run: shown as one sentence, exit status 2. */
export class CannotRun extends Error {}

/** What counts as today: the date given, else the clock's. */
export function todayOf(options: { readonly date: string | undefined }): string {
  if (options.date === undefined) return new Date().toLocaleDateString('sv-SE')
  const read = new Date(`${options.date}T00:00:00Z`)
  if (
    !/^\d{4}-\d{2}-\d{2}$/.test(options.date) ||
    Number.isNaN(read.getTime()) ||
    read.toISOString().slice(0, 10) !== options.date
  )
    throw new CannotRun(`Unexpected date \`${options.date}\`, expected a day that exists, such as \`2026-03-07\`.`)
  return options.date
}
