/** A place on a picture in per cent from the left and from the top, or why it cannot be read. */
type PlaceRead =
  | { readonly at: { readonly left: number; readonly top: number } }
  | { readonly trouble: string; readonly mend: string | null }

const percent = '([+\\-−]?\\d{1,4}(?:[.,]\\d{1,4})?)\\s*%'
const pair = new RegExp(`^\\s*${percent}\\s*[,;]?\\s*${percent}\\s*$`, 'u')

/** Reads `40%,25%`; blanks and a decimal comma are accepted. */
export function readPlace(written: string): PlaceRead {
  const [, left, top] = pair.exec(written) ?? []
  if (left === undefined || top === undefined)
    return {
      trouble: `Unexpected \`at="${written}"\`, expected per cent from the left and from the top such as \`at="40%,25%"\``,
      mend: withPercent(written),
    }
  const at = { left: numberOf(left), top: numberOf(top) }
  const outside = isOn(at.left) ? (isOn(at.top) ? null : `${top} %\` from the top`) : `${left} %\` from the left`
  if (outside === null) return { at }
  return { trouble: `Unexpected \`${outside}, expected 0 % to 100 %: a point lies on its picture`, mend: null }
}

const numberOf = (written: string): number => Number(written.replace(',', '.').replace('−', '-'))
const isOn = (share: number): boolean => share >= 0 && share <= 100

/** `40, 25` was meant so. */
function withPercent(written: string): string | null {
  const [, left, top] = /^\s*(\d{1,3}(?:\.\d+)?)\s*[,;\s]\s*(\d{1,3}(?:\.\d+)?)\s*$/u.exec(written) ?? []
  return left === undefined || top === undefined ? null : `${left}%,${top}%`
}
