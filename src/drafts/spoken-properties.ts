import type { Dimension } from '../quantities/quantity.ts'

interface Spoken {
  readonly words: RegExp
  readonly property: string
  readonly dimension: Dimension
}

const spoken = (words: string, property: string, dimension: Dimension): Spoken => ({
  words: new RegExp(String.raw`\b(?:${words})\b`, 'gi'),
  property,
  dimension,
})

/** How people say what a figure is of, the longer sayings first. */
const sayings: readonly Spoken[] = [
  spoken('ground clearance|off the ground|clear of the ground', 'ground-clearance', 'length'),
  spoken('outside diameter|diameter', 'outside-diameter', 'length'),
  spoken('wheelbase', 'wheelbase', 'length'),
  spoken('ride height', 'ride-height', 'length'),
  spoken('track', 'track', 'length'),
  spoken('clearance|gap', 'clearance', 'length'),
  spoken('long|length', 'length', 'length'),
  spoken('wide|width', 'width', 'length'),
  spoken('high|tall|height', 'height', 'length'),
  spoken('deep|depth', 'depth', 'length'),
  spoken('thick|thickness', 'thickness', 'length'),
  spoken('bore', 'bore', 'length'),
  spoken('travel', 'travel', 'length'),
  spoken('weighs|weighed|weight|mass|heavy', 'mass', 'mass'),
  spoken('holds|held|took|takes|filled|capacity', 'filled-volume', 'volume'),
  spoken('torque|torqued|wound up|done up|tightened', 'torque-set', 'torque'),
  spoken('pressure', 'pressure', 'pressure'),
  spoken('draws|drew|current', 'current', 'current'),
  spoken('voltage|volts', 'voltage', 'voltage'),
  spoken('resistance', 'resistance', 'resistance'),
  spoken('flow|flows', 'flow', 'flow'),
  spoken('temperature', 'temperature', 'temperature'),
]

interface Said {
  readonly property: string
  /** Where the word stands, from the start of the sentence. */
  readonly at: number
}

/** What a sentence says that a figure of this dimension is of: the nearest first. */
export function saidProperties(sentence: string, at: number, dimension: Dimension): Said[] {
  const found = sayings
    .filter(saying => saying.dimension === dimension)
    .flatMap(({ words, property }) => [...sentence.matchAll(words)].map(({ index }) => ({ property, at: index })))
  return found
    .filter((one, index) => found.findIndex(other => other.at === one.at) === index)
    .sort((one, other) => Math.abs(one.at - at) - Math.abs(other.at - at))
}
