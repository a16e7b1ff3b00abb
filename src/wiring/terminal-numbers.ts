/** What a number on a terminal stands for: DIN 72552 as listed publicly; 85 to 87a as relay makers number them (ISO 7588). */
export const terminalMeanings: Readonly<Record<string, string>> = {
  '1': 'ignition coil or distributor, low voltage',
  '4': 'ignition, high voltage',
  '15': 'switched positive, behind the ignition switch',
  '15a': 'output of the ballast resistor',
  '17': 'glow plugs, start',
  '19': 'glow plugs, preheat',
  '30': 'battery positive, direct; of a relay, the common contact',
  '31': 'battery negative, earth',
  '31b': 'earth through a switch or relay',
  '32': 'return of a motor',
  '33': 'main connection of a motor',
  '33a': 'self-parking of a motor',
  '49': 'flasher, input',
  '49a': 'flasher, output',
  '50': 'starter control',
  '53': 'wiper, positive input',
  '53a': 'wiper, positive for self-parking',
  '53b': 'wiper, shunt winding',
  '54': 'stop lamps',
  '54g': 'rear fog lamp of a trailer',
  '55': 'fog lamps',
  '56': 'headlamps',
  '56a': 'main beam and its tell-tale',
  '56b': 'dipped beam',
  '57a': 'parking lamps',
  '58l': 'side lamps, left',
  '58r': 'side lamps, right, and the plate lamp',
  '61': 'warning lamp of the alternator',
  '85': 'relay coil, earth end',
  '86': 'relay coil, supply end',
  '87': 'relay, contact that closes',
  '87a': 'relay, contact that opens',
  l: 'indicators, left',
  r: 'indicators, right',
}

export const terminalSource = 'DIN 72552, as public lists print it; relay numbers as ISO 7588 has them'

// A plain number is a terminal only behind a word that says so; one with its letter, such as 58L, says so itself.
const named =
  /\b(?:terminals?|contacts?|coil|kl\.?|klemme|din)\s+((?:\d{1,2}[a-z]?|[lr])(?:\s*(?:,|and|or|\/|to)\s*\d{1,2}[a-z]?)*)\b/giu
const lettered = /(?<![\p{L}\p{N}.,-])(\d{2}[a-z])(?![\p{L}\p{N}])/giu

/** The terminal numbers in words of a note, each once and as listed: `fan relay, contact 87` has 87. */
export function terminalNumbersIn(text: string): string[] {
  const said = [...text.matchAll(named)].flatMap(([, list = '']) => list.match(/\d{1,2}[a-z]?|^[lr]$/giu) ?? [])
  const alone = [...text.matchAll(lettered)].map(([, number = '']) => number)
  const found = [...said, ...alone].map(number => number.toLowerCase())
  return [...new Set(found)].filter(number => Object.hasOwn(terminalMeanings, number))
}
