import type { SocketContact } from './socket-contact.ts'
import { iso3732 } from './trailer-12s.ts'

const left = /\b(left|l|lh)\b|\b58\s?l\b/
const right = /\b(right|r|rh)\b|\b58\s?r\b/
const indicator = /indicator|turn|flasher|blinker|direction|^(l|r)$/
const position = /\b(side|position|tail|marker|parking|running|rear)\b|\b58/
const back = /return|earth|ground|\bgnd\b|negative|common|chassis|\b31\b|\bminus\b/
const anotherLamp = 'indicator|turn|flasher|blinker|direction|fog|stop|brake|revers'
const fog = /fog|\b54\s?g\b|\b52\b/
const supply = /permanent|constant|continuous|unswitched|always|battery|\b30\b/

const indicatorOf = (contact: string, side: RegExp, other: RegExp): SocketContact => ({
  contact,
  function: `${side === left ? 'left' : 'right'} direction indicator`,
  colour: side === left ? 'yellow' : 'green',
  section: 1.5,
  words: [side, indicator],
  not: other,
})

const positionOf = (contact: string, side: RegExp, other: RegExp): SocketContact => ({
  contact,
  function: `${side === left ? 'left' : 'right'} rear position and plate lamp`,
  colour: side === left ? 'black' : 'brown',
  section: 1.5,
  words: [side, position],
  not: new RegExp(`${other.source}|${anotherLamp}`),
})

/** What both standards have alike on their first seven contacts, but for the second. */
const common: readonly SocketContact[] = [
  indicatorOf('1', left, right),
  { contact: '3', function: 'common return', colour: 'white', section: 2.5, words: [back], not: /\b(9|10)\b/ },
  indicatorOf('4', right, left),
  positionOf('5', right, left),
  { contact: '6', function: 'stop lamps', colour: 'red', section: 1.5, words: [/stop|brake|\b54\b/], not: back },
  positionOf('7', left, right),
]

/** ISO 1724: seven contacts, the sections those of its cable; the second may carry 12 V in place of the fog lamp. */
const iso1724: readonly SocketContact[] = [
  ...common,
  {
    contact: '2',
    function: 'rear fog lamp',
    colour: 'blue',
    section: 1.5,
    words: [new RegExp(`${fog.source}|${supply.source}|12\\s?v`)],
    not: new RegExp(`front|${back.source}`),
    free: true,
  },
] // ISO 1724:2003, as trade pages print its allocation

/** ISO 11446-1: thirteen contacts. */
const iso11446: readonly SocketContact[] = [
  ...common,
  {
    contact: '2',
    function: 'rear fog lamp',
    colour: 'blue',
    section: 1.5,
    words: [fog],
    not: new RegExp(`front|${back.source}`),
    free: true,
  },
  {
    contact: '8',
    function: 'reversing lamp',
    colour: 'pink',
    section: 1.5,
    words: [/revers|back-?\s?up/],
    not: back,
    free: true,
  },
  {
    contact: '9',
    function: 'permanent supply',
    colour: 'orange',
    section: 2.5,
    words: [supply],
    not: new RegExp(`${back.source}|ignition|\\bswitched`),
    free: true,
  },
  {
    contact: '10',
    function: 'ignition-controlled supply',
    colour: 'grey',
    section: 2.5,
    words: [/ignition|switched|fridge|refrigerator|charg|\b15\b/],
    not: new RegExp(`${back.source}|unswitched`),
    free: true,
  },
  {
    contact: '11',
    function: 'return for contact 10',
    colour: 'white/black',
    section: 2.5,
    words: [back],
    not: /\b9\b|permanent/,
    free: true,
    withContact: '10',
  },
  {
    contact: '12',
    function: 'reserved',
    colour: null,
    section: null,
    words: [/reserved|spare|free|not used|unused|blank|coupled|trailer (detection|present|recognition)/],
    free: true,
  },
  {
    contact: '13',
    function: 'return for contact 9',
    colour: 'white/red',
    section: 2.5,
    words: [back],
    not: /\b10\b|ignition/,
    free: true,
    withContact: '9',
  },
] // ISO 11446-1:2012, as a connector maker prints its allocation

/** The standard that a socket's words name; null where none of these. */
export function socketStandard(
  words: string,
): { readonly name: string; readonly contacts: readonly SocketContact[] } | null {
  if (/11446/.test(words)) return { name: 'ISO 11446', contacts: iso11446 }
  if (/3732|\b12\s?s\b/i.test(words)) return { name: 'ISO 3732', contacts: iso3732 }
  return /1724|\b12\s?n\b/i.test(words) ? { name: 'ISO 1724', contacts: iso1724 } : null
}

/** Words for a way that is left free. */
export function isBlank(carries: string): boolean {
  return /^(spare|free|blank|empty|none|reserved|not used|unused|-|–|—)$/i.test(carries.trim())
}

/** Whether what a wire carries is the function of a contact. */
export function fitsContact({ words, not }: SocketContact, carries: string): boolean {
  const said = carries.toLowerCase()
  return words.every(pattern => pattern.test(said)) && !(not?.test(said) ?? false)
}
