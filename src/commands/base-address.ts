import { CannotRun } from './options.ts'

/** The address at which a record will be published, with a slash at its end; null where none was given. */
export function baseAddress(text: string | undefined): string | null {
  if (text === undefined) return null
  const url = URL.canParse(text) ? new URL(text) : null
  if (url === null || !['http:', 'https:'].includes(url.protocol))
    throw refusal(text, 'a whole address such as `https://example.org/sandpiper/`')
  if (url.username !== '' || url.password !== '') throw refusal(text, 'one without a name or password in it')
  if (/[?#]/.test(text)) throw refusal(text, 'one without `?` or `#`: pages are found below it')
  if (/\.html?$/i.test(url.pathname)) throw refusal(text, 'the folder that holds the record, not a page of it')
  return url.href.endsWith('/') ? url.href : `${url.href}/`
}

const refusal = (text: string, expected: string): CannotRun =>
  new CannotRun(`Unexpected address \`${text}\` for --base, expected ${expected}.`)
