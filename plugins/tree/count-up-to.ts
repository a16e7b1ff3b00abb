/** How many entries of a rising list are at most `limit`. */
export function countUpTo(rising: readonly number[], limit: number): number {
  let low = 0
  let high = rising.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((rising[middle] ?? 0) <= limit) low = middle + 1
    else high = middle
  }
  return low
}
