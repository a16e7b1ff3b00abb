/** The optional reader of HEIC: the package bears no types of its own. */
declare module 'heic-decode' {
  interface HeicImage {
    readonly width: number
    readonly height: number
    /** RGBA, one byte each. */
    readonly decode: () => Promise<{
      readonly width: number
      readonly height: number
      readonly data: Uint8ClampedArray
    }>
  }
  type HeicImages = HeicImage[] & { readonly dispose: () => void }
  const decode: { readonly all: (given: { readonly buffer: Uint8Array }) => Promise<HeicImages> }
  export default decode
}
