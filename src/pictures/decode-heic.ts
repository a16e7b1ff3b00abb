import { createRequire } from 'node:module'
import { TroubledPicture } from './troubled-picture.ts'

/** Pixels of a picture, RGBA. */
export interface Pixels {
  readonly width: number
  readonly height: number
  readonly data: Uint8Array
}

type Decoder = typeof import('heic-decode')['default']

/** Whether the optional reader of HEIC is installed where oddleg finds it; it is not loaded. */
export function canReadHeic(): boolean {
  try {
    createRequire(import.meta.url).resolve('heic-decode')
    return true
  } catch {
    return false
  }
}

const load = async (): Promise<Decoder> => (await import('heic-decode')).default

/** The first picture of a HEIC file, turned as its own rotation says; throws `TroubledPicture` where there is no reader, or it fails. */
export function decodeHeic(buffer: Uint8Array, most: number, loadDecoder = load): Promise<Pixels> {
  const decoded = turn.then(() => inSilence(() => decodeFirst(buffer, most, loadDecoder)))
  turn = decoded.catch(() => undefined)
  return decoded
}

/** Decoding takes the one thread there is, so pictures wait for each other. */
let turn: Promise<unknown> = Promise.resolve()

/** The reader says what it does not like on standard output, where only results may stand. */
async function inSilence<T>(work: () => Promise<T>): Promise<T> {
  const { log } = console
  console.log = () => undefined
  try {
    return await work()
  } finally {
    console.log = log
  }
}

async function decodeFirst(buffer: Uint8Array, most: number, loadDecoder: typeof load): Promise<Pixels> {
  const decoder = await loadDecoder().catch(() => null)
  if (decoder === null) throw new TroubledPicture('heic')
  const images = await decoder.all({ buffer }).catch(() => null)
  if (images === null) throw new TroubledPicture('damaged')
  try {
    const [first] = images
    if (first === undefined) throw new TroubledPicture('damaged')
    if (first.width * first.height > most) throw new TroubledPicture('large', first)
    const { width, height, data } = await first.decode()
    return { width, height, data: new Uint8Array(data.buffer, data.byteOffset, data.byteLength) }
  } catch (cause) {
    throw cause instanceof TroubledPicture ? cause : new TroubledPicture('damaged')
  } finally {
    images.dispose()
  }
}
