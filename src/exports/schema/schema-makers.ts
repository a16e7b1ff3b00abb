export type Schema = { readonly [key: string]: unknown }

export const text: Schema = { type: 'string' }
export const words: Schema = { type: ['string', 'null'] }
export const number: Schema = { type: 'number' }
export const figure: Schema = { type: ['number', 'null'] }
export const flag: Schema = { type: 'boolean' }

/** A schema with what it means to a reader. */
export const told = (description: string, schema: Schema): Schema => ({ ...schema, description })

export const listOf = (items: Schema): Schema => ({ type: 'array', items })
export const oneOf = (...values: readonly (string | null)[]): Schema => ({ enum: values })
export const named = (definition: string): Schema => ({ $ref: `#/$defs/${definition}` })

/** `null` as well. */
export const orNull = (schema: Schema): Schema => ({ anyOf: [schema, { type: 'null' }] })

/** An object that has all of `properties` and nothing else, but for those of `optional`. */
export function closed(properties: Record<string, Schema>, optional: Record<string, Schema> = {}): Schema {
  return {
    type: 'object',
    properties: { ...properties, ...optional },
    required: Object.keys(properties),
    additionalProperties: false,
  }
}

/** An object that has all of `properties`; what else a note says of it is nested as written. */
export function open(properties: Record<string, Schema>, others: Schema): Schema {
  return { type: 'object', properties, required: Object.keys(properties), additionalProperties: others }
}
