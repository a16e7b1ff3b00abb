import matter from 'gray-matter'

/** gray-matter's engines that run or read other languages: each refuses, under every name that leads to it. */
function refusing(name: string) {
  return {
    parse(): object {
      throw new Error(`Front matter in ${name} is refused`)
    },
    stringify: () => '',
  }
}

/**
 * Hands the YAML of a front matter block to `read`, through gray-matter with every engine but YAML refused.
 * `raw` is what stands between the opening `---` and the line end before the closing one. Null where it holds nothing.
 * Throws where the opening fence names a language that is refused or not known.
 */
export function readThroughMatter<T extends object>(raw: string, read: (yaml: string) => T): T | null {
  const kept: { reading: T | null } = { reading: null }
  const parse = (yaml: string): T => {
    kept.reading = read(yaml.replace(/\r$/, '')) // gray-matter leaves the carriage return before the closing fence.
    return kept.reading
  }
  // The options object also keeps gray-matter from its cache, which returns shared objects and swallows errors.
  matter(`---${raw}\n---\n`, {
    language: 'yaml',
    delimiters: ['---', '---\n'], // Without the line end `--- not a fence` would close.
    engines: {
      yaml: { parse, stringify: () => '' },
      javascript: refusing('JavaScript'),
      js: refusing('JavaScript'),
      json: refusing('JSON'),
      coffee: refusing('CoffeeScript'),
    },
  })
  return kept.reading
}
