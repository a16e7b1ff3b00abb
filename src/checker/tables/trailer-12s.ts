import type { SocketContact } from './socket-contact.ts'

const back = /return|earth|ground|\bgnd\b|negative|\b31\b|\bminus\b/
const ignition = /ignition|switched|\b15\b/
const any = /./

/**
 * ISO 3732, the second socket of a caravan, sold as 12S. Trade pages print its functions; a cable maker has three cores of
 * 2.5 mm² without saying which, so every contact is asked for 1.5. Contacts 2, 5 and 7 differ by market and year: anything may be on them.
 */
export const iso3732: readonly SocketContact[] = [
  {
    contact: '1',
    function: 'reversing lamp',
    colour: 'yellow',
    section: 1.5,
    words: [/revers|back-?\s?up/],
    not: back,
    free: true,
  },
  {
    contact: '2',
    function: 'ignition-controlled supply to charge a battery, or spare',
    colour: 'blue',
    section: 1.5,
    words: [any],
    free: true,
    differs: true,
  },
  {
    contact: '3',
    function: 'return of contacts 1, 2 and 4',
    colour: 'white',
    section: 1.5,
    words: [back],
    not: /\b6\b/,
  },
  {
    contact: '4',
    function: 'permanent supply',
    colour: 'green',
    section: 1.5,
    words: [/permanent|constant|continuous|unswitched|always|battery|\b30\b|12\s?v/],
    not: new RegExp(`${back.source}|ignition|\\bswitched`),
    free: true,
  },
  {
    contact: '5',
    function: 'spare, or sensing',
    colour: 'brown',
    section: 1.5,
    words: [any],
    free: true,
    differs: true,
  },
  {
    contact: '6',
    function: 'ignition-controlled supply of a refrigerator',
    colour: 'red',
    section: 1.5,
    words: [new RegExp(`${ignition.source}|fridge|refrigerator`)],
    not: new RegExp(`${back.source}|unswitched`),
    free: true,
  },
  {
    contact: '7',
    function: 'return of contact 6',
    colour: 'black',
    section: 1.5,
    words: [any],
    free: true,
    differs: true,
  },
]
