import type { Subject } from '../facts/fact.ts'
import { pageAddress, relativeHref } from './addresses.ts'
import { noteAddress, subjectAddress } from './thing-addresses.ts'

const fromTop = (address: string): string => relativeHref('index.html', address)

/** Addresses of pages as links from the top of the record, for what is made beside the pages. */
export const recordAddresses = {
  note: (session: string | null): string => fromTop(noteAddress(session)),
  thing: (subject: Subject): string => fromTop(subjectAddress(subject)),
  inspection: fromTop(pageAddress('inspection')),
}
