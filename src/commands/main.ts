import { readFileSync } from 'node:fs'
import { Command, CommanderError } from 'commander'
import { type BuildOptions, CannotRun, type PublishOptions } from './options.ts'

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
}

function readCommands(program: Command, finish: Finish): void {
  forBuild(program.command('check').description('what is wrong with the notes, and how each check comes out'))
    .option('--edition <name>', 'as which edition it would be published', 'full')
    .option('--watch', 'check again after each change', false)
    .action((options: BuildOptions & { edition: string; watch: boolean }) =>
      finish(import('./check.ts').then(({ check }) => check(options))),
    )
  program
    .command('explain')
    .description('what a rule, a check, a kind or a unit means')
    .argument('<name>', 'such as voltage-drop, unit-slip, tank, lbf_ft')
    .option('--json', 'one JSON document', false)
    .action((name: string, options: { json: boolean }) =>
      finish(import('./explain.ts').then(({ explain }) => explain(name, options))),
    )
}

function publishCommands(program: Command, finish: Finish): void {
  forBuild(program.command('build').description('check, then publish the record as a folder of pages'))
    .option('--out <dir>', 'the folder to publish to, from the build folder on', '_site')
    .option('--edition <name>', 'which edition to publish', 'full')
    .option('--force', 'publish although a note has errors, and show them', false)
    .action((options: PublishOptions) => finish(import('./build.ts').then(({ build }) => build(options))))
  forBuild(program.command('serve').description('build, serve on this machine only, build again after each change'))
    .option('--edition <name>', 'which edition to show', 'full')
    .option('--port <number>', 'the port; 0 takes a free one', '8088')
    .action((options: BuildOptions & { edition: string; port: string }) =>
      finish(import('./serve.ts').then(({ serve }) => serve(options))),
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
