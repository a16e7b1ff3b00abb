import { readFileSync } from 'node:fs'
import { Command, CommanderError } from 'commander'
import { type BuildOptions, CannotRun, type PublishOptions } from './options.ts'
import type { VerifyOptions } from './verify.ts'

/** Runs the program; gives its exit status: 0 nothing wrong, 1 an error in a note or a failed check, 2 it could not run. */
export async function main(argv: readonly string[]): Promise<number> {
  let status = Promise.resolve(0)
  const program = describe(result => {
    status = result
  })
  try {
    await program.parseAsync([...argv])
    return await status
  } catch (cause) {
    return statusOfFailure(cause)
  }
}

function statusOfFailure(cause: unknown): number {
  if (cause instanceof CommanderError) return cause.exitCode === 0 ? 0 : 2
  if (!(cause instanceof CannotRun)) throw cause
  process.stderr.write(`oddleg: ${cause.message}\n`)
  return 2
}

/** Each command is loaded when it is run: what prints pages is not loaded to check a note. */
type Finish = (status: Promise<number>) => void

function describe(finish: Finish): Command {
  const program = new Command('oddleg')
    .description(
      'The as-built record of a one-off vehicle, from its builder’s session notes: checked, with shown workings.',
    )
    .version(ownVersion())
    .showHelpAfterError('(oddleg --help lists the commands)')
    .exitOverride()
  makeCommands(program, finish)
  readCommands(program, finish)
  publishCommands(program, finish)
  verifyCommand(program, finish)
  return program
}

function makeCommands(program: Command, finish: Finish): void {
  program
    .command('init')
    .description('a new build: build.md, a first note that shows the format, a photo folder; never writes over a file')
    .argument('<dir>', 'the folder to make')
    .option('--date <day>', 'what counts as today, such as 2026-03-07')
    .action((folder: string, options: { date?: string }) =>
      finish(import('./init.ts').then(({ init }) => init(folder, options.date))),
    )
  forBuild(
    program.command('note').description('a new dated note with open jobs and what to measure next, ready to tick'),
  )
    .argument('<title>', 'the title of the session')
    .action((title: string, options: BuildOptions) =>
      finish(import('./note.ts').then(({ note }) => note(title, options))),
    )
  forBuild(
    program
      .command('draft')
      .description(
        'rough or dictated words, or a purchase list (.csv, .xlsx), become a session note; nothing is decided',
      ),
  )
    .argument('<file>', 'the file; - reads words from standard input')
    .option('--title <words>', 'the title of the note')
    .action((file: string, options: BuildOptions & { title: string | undefined }) =>
      finish(import('./draft.ts').then(({ draft }) => draft(file, options))),
    )
}

function readCommands(program: Command, finish: Finish): void {
  forBuild(program.command('check').description('what is wrong with the notes, and how each check comes out'))
    .option(
      '--edition <name>',
      'what this edition would leave out, and withheld words in it; without it, of every edition',
    )
    .option('--watch', 'check again after each change', false)
    .action((options: BuildOptions & { edition: string | undefined; watch: boolean }) =>
      finish(import('./check.ts').then(({ check }) => check(options))),
    )
  forBuild(program.command('find').description('where something was measured, fitted or written, in any unit'))
    .argument('<words...>', 'words and quantities, such as fuel tank 860 mm, ">200 mm", "about 4 ft", 60..70 L')
    .option('--edition <name>', 'what of the record may be found', 'full')
    .action((words: string[], options: BuildOptions & { edition: string }) =>
      finish(import('./find.ts').then(({ find }) => find(words, options))),
    )
  forBuild(program.command('since').description('what changed in the record since a session'))
    .argument('<session>', 'its name, its number or a day, such as 2026-03-07')
    .option('--edition <name>', 'what of the record may be seen', 'full')
    .action((session: string, options: BuildOptions & { edition: string }) =>
      finish(import('./since.ts').then(({ since }) => since(session, options))),
    )
  program
    .command('explain')
    .description('what a rule, a check, a kind or a unit means')
    .argument('<name>', 'such as voltage-drop, checks (where all of them are from), unit-slip, tank, lbf_ft')
    .option('--build <dir>', 'the folder that holds content/: how a check comes out there', '.')
    .option('--json', 'one JSON document', false)
    .action((name: string, options: { json: boolean; build: string }) =>
      finish(import('./explain.ts').then(({ explain }) => explain(name, options))),
    )
}

function publishCommands(program: Command, finish: Finish): void {
  forBuild(program.command('build').description('check, then publish the record as a folder of pages'))
    .option('--out <dir>', 'the folder to publish to, from the build folder on (_site; _tables with --export-only)')
    .option('--edition <name>', 'which edition to publish', 'full')
    .option('--all-editions', 'every edition, each to a folder of its own: _site-NAME, or NAME within --out', false)
    .option('--since <session>', 'the session, its number or a day, with which the page of changes compares')
    .option(
      '--base <url>',
      'the address at which the record will be published: for the feed, the sitemap and the labels',
    )
    .option('--pdf', 'the record as one document too, record.pdf among the pages', false)
    .option(
      '--browser <path>',
      'the Chromium, Chrome or Edge that prints it; else CHROMIUM_PATH, else one that is installed',
    )
    .option('--export-only', 'only record.json, its schema and the tables, without pages', false)
    .option('--force', 'publish although a note has errors, and show them', false)
    .action((options: PublishOptions) => finish(import('./build.ts').then(({ build }) => build(options))))
  forBuild(program.command('serve').description('build, serve on this machine only, build again after each change'))
    .option('--edition <name>', 'which edition to show', 'full')
    .option('--port <number>', 'the port; 0 takes a free one', '8088')
    .action((options: BuildOptions & { edition: string; port: string }) =>
      finish(import('./serve.ts').then(({ serve }) => serve(options))),
    )
}

function verifyCommand(program: Command, finish: Finish): void {
  program
    .command('verify')
    .description('whether a published record is still what was published: every file that is changed, missing or extra')
    .argument('<dir>', 'the folder of the record')
    .option('--build <dir>', 'the folder that holds content/: compare its notes too')
    .option('--sum <digits>', 'the sum of the manifest that was printed when it was published')
    .option('--json', 'one JSON document on standard output', false)
    .action((folder: string, options: VerifyOptions) =>
      finish(import('./verify.ts').then(({ verify }) => verify(folder, options))),
    )
}

/** What every command takes that reads a build. */
function forBuild(command: Command): Command {
  return command
    .option('--build <dir>', 'the folder that holds content/', '.')
    .option('--date <day>', 'what counts as today, such as 2026-03-07')
    .option('--strict', 'exit 1 on a warning or a marginal check too', false)
    .option('--json', 'one JSON document on standard output', false)
}

function ownVersion(): string {
  const read: unknown = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'))
  return typeof read === 'object' && read !== null && 'version' in read ? String(read.version) : ''
}
