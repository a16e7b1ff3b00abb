import type { ReadOptions } from './quantity.ts'

/** A spelling that stands for more than one unit until build.md, or the writer, says which. */
interface AmbiguousUnit {
  readonly key: string
  readonly names: string
  /** The unit that build.md chooses; null where it leaves the question open. */
  readonly choose: (options: ReadOptions) => string | null
  readonly question: string
  readonly mend: string
}

const byGallon =
  (imperial: string, us: string) =>
  ({ gallon }: ReadOptions): string | null =>
    gallon === null ? null : gallon === 'imperial' ? imperial : us

const never = (): null => null
const setGallon = 'set `gallon:` in build.md to imperial or us'

/** Every spelling of a workshop that asks back. */
export const ambiguousUnits: readonly AmbiguousUnit[] = [
  {
    key: 'gal',
    names: 'gal+|gallon+',
    choose: byGallon('gal_imp', 'gal_us'),
    question: 'imperial or US gallons',
    mend: `write \`imp gal\` or \`US gal\`, or ${setGallon}`,
  },
  {
    key: 'gph',
    names: 'gph',
    choose: byGallon('gal_imp_h', 'gal_us_h'),
    question: 'imperial or US gallons an hour',
    mend: `write \`imp gal/h\` or \`US gal/h\`, or ${setGallon}`,
  },
  {
    key: 'gpm',
    names: 'gpm',
    choose: byGallon('gal_imp_min', 'gal_us_min'),
    question: 'imperial or US gallons a minute',
    mend: `write \`imp gal/min\` or \`US gal/min\`, or ${setGallon}`,
  },
  {
    key: 'mpg',
    names: 'mpg|MPG',
    choose: byGallon('mpg_imp', 'mpg_us'),
    question: 'miles to an imperial or a US gallon',
    mend: `write \`mpg (imp)\` or \`mpg (US)\`, or ${setGallon}`,
  },
  {
    key: 'pt',
    names: 'pt|pts|pint+',
    choose: byGallon('pt_imp', 'pt_us'),
    question: 'imperial or US pints',
    mend: `write \`imp pints\` or \`US pints\`, or ${setGallon}`,
  },
  {
    key: 'fl-oz',
    names: 'fl oz|fl. oz|fl ozs|floz|fluid ounce+|fluid oz',
    choose: byGallon('fl_oz_imp', 'fl_oz_us'),
    question: 'imperial or US fluid ounces',
    mend: `write \`imp fl oz\` or \`US fl oz\`, or ${setGallon}`,
  },
  {
    key: 'qt',
    names: 'qt|qts|quart+',
    choose: byGallon('qt_imp', 'qt_us'),
    question: 'imperial or US quarts',
    mend: `write \`imp quarts\` or \`US quarts\`, or ${setGallon}`,
  },
  {
    key: 'cwt',
    names: 'cwt|cwts|hundredweight+',
    choose: byGallon('cwt_imp', 'cwt_us'),
    question: 'a hundredweight of 112 lb or of 100 lb',
    mend: `write \`imp cwt\` or \`US cwt\`, or ${setGallon}`,
  },
  {
    key: 'mil',
    names: 'mil|mils',
    choose: ({ mil }) => mil,
    question: 'millimetres or thousandths of an inch',
    mend: 'write `mm` or `thou`, or set `mil:` in build.md',
  },
  { key: 'pound', names: 'pound+', choose: never, question: 'a mass or money', mend: 'write `lb` or `£`' },
  {
    key: 'ton',
    names: 'ton+',
    choose: never,
    question: 'a tonne, a long ton or a short ton',
    mend: 'write `tonnes`, `long tons` or `short tons`',
  },
  {
    key: 'fahrenheit',
    names: 'F',
    choose: never,
    question: 'degrees Fahrenheit or farads',
    mend: 'write `°F` or `farads`',
  },
  {
    key: 'swg',
    names: 'swg|SWG',
    choose: never,
    question: 'a diameter by which gauge table',
    mend: 'write the size in mm',
  },
  {
    key: 'gauge',
    names: 'ga wire+|ga. wire+|gauge wire+',
    choose: never,
    question: 'AWG, SWG or the gauge of another table',
    mend: 'write `AWG` or the size in mm',
  },
  {
    key: 'nm-letters',
    names: 'nm|NM',
    choose: never,
    question: 'N·m, nautical miles or nanometres',
    mend: 'write `Nm`, `nmi` or `nanometres`',
  },
  {
    key: 'in-place',
    names: '',
    choose: never,
    question: 'inches, or so many of a thing that are in place',
    mend: 'write `inches` if inches are meant, or the number as a word',
  },
  {
    key: 'g-force',
    names: 'g of braking|g of acceleration|g of deceleration|g of cornering|g of lateral acceleration',
    choose: never,
    question: 'grams or standard gravity',
    mend: 'write `gn`',
  },
]
