/** Something that words may mean: for the builder to accept. */
export interface Proposal {
  readonly section: 'parts' | 'spend' | 'measurements'
  /** The thing whose key it is; null for a line of a list. */
  readonly thing: string | null
  /** Key and value in YAML; of a list's line all its keys. */
  readonly keys: readonly (readonly [string, string])[]
  /** The words that it came from. */
  readonly said: string
}

/** A value as YAML would read it back; quoted where it might be read as anything else. */
export function yamlValue(text: string): string {
  return /^[\p{L}\p{N}£€$][^:#"'\\{}[\],&*!|>%@`]*$/u.test(text) && !/^(?:yes|no|on|off|true|false|null)$/i.test(text)
    ? text
    : JSON.stringify(text)
}
