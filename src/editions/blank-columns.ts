/** A place or a span of a file made anew without its columns: how far words stand from the margin tells how long others are. */
export function blankColumns<T>(value: T): T {
  return blank(value) as T
}

function blank(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(blank)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]): [string, unknown][] => {
      if (key === 'offset' && typeof inner === 'number') return []
      if ((key === 'column' || key === 'endColumn') && typeof inner === 'number') return [[key, 1]]
      return [[key, blank(inner)]]
    }),
  )
}
