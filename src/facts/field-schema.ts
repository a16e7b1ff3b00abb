import { z } from 'zod'
import { closed } from './field-makers.ts'
import type { Field, Fields } from './fields.ts'

/** The schema of a mapping with these keys. What a mistake in it is called stands in the issue's message. */
export function schemaOf(fields: Fields): z.ZodType {
  const shape = Object.fromEntries(
    Object.entries(fields).map(([key, field]) => [key, schemaOfField(field).nullable().optional()]),
  )
  const known = Object.keys(fields)
  return z.strictObject(shape, {
    error: issue =>
      issue.code === 'unrecognized_keys'
        ? known.join(' ')
        : `a mapping with keys such as \`${known.slice(0, 2).join('`, `')}\``,
  })
}

const text = z.string({ error: 'words' })

function schemaOfField(field: Field): z.ZodType {
  switch (field.holds) {
    case 'words':
    case 'prose':
    case 'colour':
      return text
    case 'closed':
      return z.enum([...field.words], { error: field.words.join(' ') })
    case 'list':
      return listSchema(field.of)
    case 'cable':
    case 'return':
      return z.union([text, schemaOf(field.fields)])
    case 'group':
      return field.short === undefined ? schemaOf(field.fields) : z.union([text, schemaOf(field.fields)])
    case 'named':
      return z.record(z.string(), schemaOfField(field.each).nullable(), { error: 'a mapping of names' })
    case 'rows':
      return rowsSchema(field.fields)
    default:
      return z.unknown()
  }
}

/** A list, or a lone text in its stead. */
function listSchema(words: readonly string[] | undefined): z.ZodType {
  const entry = words === undefined ? text : schemaOfField(closed(words))
  return z.union([entry, z.array(entry, { error: 'a list such as `[first, second]`' })])
}

function rowsSchema(fields: Fields): z.ZodType {
  const [first = ''] = Object.keys(fields)
  return z.array(schemaOf(fields), { error: `a list of mappings such as \`- { ${first}: … }\`` })
}
