import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import sharp, { type Sharp } from 'sharp'
import { scratch } from '../commands/run-oddleg.ts'

/** Pictures made for these tests; nobody took them. */
export const orange = { r: 220, g: 120, b: 20 }

/** A picture of one colour, its left half of another, so that one can see how it was turned. */
export function halves(width: number, height: number): Sharp {
  return sharp({ create: { width, height, channels: 3, background: orange } }).composite([
    { input: { create: { width: Math.ceil(width / 2), height, channels: 3, background: '#003060' } }, left: 0, top: 0 },
  ])
}

/** Noise, as a photograph has it; the same each time. */
export function noise(width: number, height: number): Sharp {
  const data = Buffer.alloc(width * height * 3)
  let state = 1
  for (let at = 0; at < data.length; at++) {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff // the example of ISO C 7.22.2
    data[at] = state >>> 16
  }
  return sharp(data, { raw: { width, height, channels: 3 } })
}

/** A build folder that holds these files. */
export function folderWith(files: Readonly<Record<string, Uint8Array | string>>): string {
  const folder = scratch('pictures')
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), content)
  }
  return folder
}

/** An orange of 64 × 48 pixels in HEIC, made with libheif's `heif-enc`, dated 7 March 2026 by an `Artist`. */
export const heic = Buffer.from(
  'AAAAHGZ0eXBoZWljAAAAAG1pZjFoZWljbWlhZgAAAeFtZXRhAAAAAAAAACFoZGxyAAAAAAAAAABwaWN0AAAAAAAAAAAAAAAAAAAAAA5waXRtAAAAAAACAAAAEGlkYXQAAAAAAEAAMAAAAExpbG9jAQAAAERAAAMAAQAAAAAAAAIFAAEAAAAAAAAAGgACAAEAAAAAAAAAAQAAAAAAAAAIAAMAAAAAAAACHwABAAAAAAAAAOQAAABNaWluZgAAAAAAAwAAABVpbmZlAgAAAQABAABodmMxAAAAABVpbmZlAgAAAAACAABncmlkAAAAABVpbmZlAgAAAQADAABFeGlmAAAAANVpcHJwAAAAs2lwY28AAABzaHZjQwEDcAAAAAAAAAAAAB7wAPz9+PgAAA8DIAABABhAAQwB//8DcAAAAwCQAAADAAADAB66AkAhAAEAJ0IBAQNwAAADAJAAAAMAAAMAHqAggQWW6uSmubAgAAADACAAAAMAISIAAQAGRAHBc8CJAAAAFGlzcGUAAAAAAAAAQAAAAEAAAAAUaXNwZQAAAAAAAABAAAAAMAAAABBwaXhpAAAAAAMICAgAAAAaaXBtYQAAAAAAAAACAAECgQIAAgIDhAAAAChpcmVmAAAAAAAAAA5kaW1nAAIAAQABAAAADmNkc2MAAwABAAIAAAEGbWRhdAAAABYoAa9Y5vTqvi+Dz//bGkh6j/HkanfAAAAAAElJKgAIAAAABwASAQMAAQAAAAEAAAAaAQUAAQAAAGIAAAAbAQUAAQAAAGoAAAAoAQMAAQAAAAIAAAA7AQIAAwAAAFpxAAATAgMAAQAAAAEAAABphwQAAQAAAHIAAAAAAAAAOGMAAOgDAAA4YwAA6AMAAAcAAJAHAAQAAAAwMjEwA5ACABQAAADMAAAAAZEHAAQAAAABAgMAAKAHAAQAAAAwMTAwAaADAAEAAAD//wAAAqAEAAEAAABAAAAAA6AEAAEAAAAwAAAAAAAAADIwMjY6MDM6MDcgMTQ6MDI6MTEA',
  'base64',
)
