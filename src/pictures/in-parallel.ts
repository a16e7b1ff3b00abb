/** Works on all of a list, at most so many at a time; the results stand in the order of the list. */
export async function inParallel<T, R>(list: readonly T[], most: number, work: (one: T) => Promise<R>): Promise<R[]> {
  const results: R[] = []
  const waiting = list.entries()
  const worker = async (): Promise<void> => {
    for (const [index, one] of waiting) results[index] = await work(one)
  }
  await Promise.all(Array.from({ length: Math.min(most, list.length) }, worker))
  return results
}
