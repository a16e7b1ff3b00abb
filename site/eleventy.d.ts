/** The part of Eleventy 3 that the site uses; the package has no types of its own. */
declare module '@11ty/eleventy' {
  class Eleventy {
    constructor(input: string, output: string, options: Eleventy.Options)
    toJSON(): Promise<{ url: string | false; inputPath: string; content: string }[]>
  }
  namespace Eleventy {
    interface Options {
      quietMode: boolean
      configPath: null
      source: 'script'
      config: (config: Config) => void
    }
    interface Config {
      ignores: Set<string>
      setUseGitIgnore(use: boolean): void
      setTemplateFormats(formats: string[]): void
      addGlobalData(name: string, data: () => unknown): void
      addExtension(
        extension: string,
        options: { key: string; compile(): (this: Template, given: unknown) => Promise<string> },
      ): void
    }
    interface Template {
      defaultRenderer(given: unknown): Promise<unknown>
    }
  }
  export default Eleventy
}
