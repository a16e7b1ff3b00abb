/** What a GFM table's header says that it holds; columns by their position from 0. */
export type TableReading =
  | {
      readonly holds: 'measurements'
      readonly columns: { measurement: number; value: number; with?: number; note?: number }
    }
  | {
      readonly holds: 'pins'
      readonly columns: {
        pin: number
        wire?: number
        to?: number
        carries?: number
        circuit?: number
        meets?: number
        terminal?: number
      }
    }
  | {
      readonly holds: 'parts'
      readonly columns: {
        part: number
        cost: number
        qty?: number
        from?: number
        action?: number
        system?: number
        kind?: number
      }
    }

declare module 'mdast' {
  interface TableData {
    reading?: TableReading
  }
}
