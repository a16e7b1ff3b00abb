declare module '@lhncbc/ucum-lhc' {
  interface Answer {
    readonly status: string
    readonly toVal: number | null
  }
  interface Utils {
    convertUnitTo(from: string, value: number, to: string): Answer
    validateUnitString(code: string): Answer
  }
  const ucum: { readonly UcumLhcUtils: { getInstance(): Utils } }
  export default ucum
}
