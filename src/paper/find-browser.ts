import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import { PaperError } from './paper-error.ts'

/** Where the operating systems put a browser that prints PDF; the first that is there is taken. */
const usualPlaces: Readonly<Record<string, readonly string[]>> = {
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: ['ProgramFiles', 'ProgramFiles(x86)', 'LocalAppData'].flatMap(root => {
    const folder = process.env[root]
    if (folder === undefined) return []
    return [
      join(folder, 'Chromium/Application/chrome.exe'),
      join(folder, 'Google/Chrome/Application/chrome.exe'),
      join(folder, 'Microsoft/Edge/Application/msedge.exe'),
    ]
  }),
}

const namesOnPath = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge']

interface Asked {
  /** What the command was given. */
  readonly named: string | undefined
  readonly environment: Readonly<Record<string, string | undefined>>
}

/** The program of a Chromium: the one that was named, else CHROMIUM_PATH, else the system's, else the one from npm. */
export async function findBrowser({ named, environment }: Asked): Promise<string> {
  const given = named ?? environment.CHROMIUM_PATH
  if (given !== undefined && given !== '') {
    if (isProgram(given)) return given
    const from = named === undefined ? 'CHROMIUM_PATH' : '--browser'
    throw new PaperError(`Unexpected \`${given}\` from ${from}, expected the program of a Chromium, Chrome or Edge.`)
  }
  const onPath = (environment.PATH ?? '')
    .split(delimiter)
    .flatMap(folder => namesOnPath.map(name => join(folder, name)))
  const places = [...onPath, ...(usualPlaces[process.platform] ?? [])]
  const found = places.find(isProgram) ?? (await browserFromNpm())
  if (found !== null) return found
  throw new PaperError(
    'No browser was found that prints PDF. Install Chromium, Chrome or Edge, name one with --browser PATH or CHROMIUM_PATH, or run `npm install @sparticuz/chromium@147` (Linux).',
  )
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Unpacks itself into the folder for temporary files when it is asked. */
async function browserFromNpm(): Promise<string | null> {
  try {
    const { default: chromium } = await import('@sparticuz/chromium')
    return await chromium.executablePath()
  } catch {
    return null
  }
}
