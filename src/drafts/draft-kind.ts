import { DraftTrouble } from './draft-trouble.ts'

type DraftKind = 'workbook' | 'list' | 'words'

const mostMb = 64 // of a file that one note is drafted from: a list of 500,000 rows

/** What a file is, by its first bytes before its name; old and locked workbooks, and what is no list, are refused. */
export function draftKind(bytes: Uint8Array, file: string, ending: string): DraftKind {
  if (bytes.length > mostMb * 1024 * 1024)
    throw new DraftTrouble(`\`${file}\` is larger than ${mostMb} MB, expected the list or the words of one session.`)
  const begins = (...signature: readonly number[]): boolean => signature.every((byte, at) => bytes[at] === byte)
  if (begins(0xd0, 0xcf, 0x11, 0xe0)) throw new DraftTrouble(`\`${file}\` ${compoundFault(bytes)}`)
  if (begins(0x25, 0x50, 0x44, 0x46))
    throw new DraftTrouble(`\`${file}\` is a PDF: save the list as CSV or XLSX, or copy its words into a text file.`)
  if (begins(0x50, 0x4b) || ending === '.xlsx') return 'workbook'
  return ending === '.csv' || ending === '.tsv' ? 'list' : 'words'
}

/** Old workbooks and locked new ones are both compound files ([MS-CFB] 2.2); the locked have a stream of this name ([MS-OFFCRYPTO] 1.3.2). */
function compoundFault(bytes: Uint8Array): string {
  const locked = Buffer.from('EncryptedPackage', 'utf16le')
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).includes(locked)
    ? 'is locked with a password: take the password off and save it as XLSX or CSV.'
    : 'is a workbook of the old kind (XLS): save it as XLSX or CSV.'
}
