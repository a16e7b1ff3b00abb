import type { Sentence } from '../describe-readings.ts'

export const sentences: readonly Sentence[] = [
  ['The gearbox was £85.', '£85 = 85 money:GBP'],
  ['The gearbox was 85 GBP.', '85 GBP = 85 money:GBP'],
  ['Paid €12.50 for it, and $9 to ship it.', '€12.50 = 12.5 money:EUR | $9 = 9 money:USD'],
  ['Cost me 85 quid.', '85 quid = 85 money:GBP'],
  ['The hull is worth £2m, the mould £1.5k.', '£2m = 2000000 money:GBP | £1.5k = 1500 money:GBP'],
  ['Rope is £4 a metre, chain €9.50 a kilo.', '£4 = 4 money:GBP | €9.50 = 9.5 money:EUR'],
  ['About £40, or under £50 anyway.', 'About £40 = ~40 money:GBP | £50 = 50 money:GBP'],
  ['Sold it for £1,250.50.', '£1,250.50 = 1250.5 money:GBP'],
  ['A refund of -£5.', '-£5 = -5 money:GBP'],
  ['Paid £12 an hour and £9 per litre.', '£12 = 12 money:GBP | £9 = 9 money:GBP'],
  ['Four quid a kilo is dear.', 'Four quid = 4 money:GBP'],
  ['Paid US$9 and 30 euros.', 'US$9 = 9 money:USD | 30 euros = 30 money:EUR'],
]
