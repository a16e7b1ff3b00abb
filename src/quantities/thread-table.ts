/** Nominal diameter and coarse pitch in millimetres (ISO 261). */
export const metricCoarse: ReadonlyMap<number, number> = new Map([
  [1, 0.25], [1.2, 0.25], [1.4, 0.3], [1.6, 0.35], [1.8, 0.35], [2, 0.4], [2.5, 0.45], [3, 0.5], [3.5, 0.6], [4, 0.7], [5, 0.8],
  [6, 1], [7, 1], [8, 1.25], [9, 1.25], [10, 1.5], [11, 1.5], [12, 1.75], [14, 2], [16, 2], [18, 2.5], [20, 2.5], [22, 2.5],
  [24, 3], [27, 3], [30, 3.5], [33, 3.5], [36, 4], [39, 4], [42, 4.5], [45, 4.5], [48, 5], [52, 5], [56, 5.5], [60, 5.5], [64, 6],
]) // biome-ignore format: a table reads better in rows

/** Threads to the inch by size: a fraction of an inch, or a number with its `#` (ASME B1.1). */
export const unified: Readonly<Record<'UNC' | 'UNF', Readonly<Record<string, number>>>> = {
  UNC: {
    '#1': 64, '#2': 56, '#3': 48, '#4': 40, '#5': 40, '#6': 32, '#8': 32, '#10': 24, '#12': 24, '1/4': 20, '5/16': 18, '3/8': 16,
    '7/16': 14, '1/2': 13, '9/16': 12, '5/8': 11, '3/4': 10, '7/8': 9, '1': 8, '9/8': 7, '5/4': 7, '11/8': 6, '3/2': 6,
  },
  UNF: {
    '#0': 80, '#1': 72, '#2': 64, '#3': 56, '#4': 48, '#5': 44, '#6': 40, '#8': 36, '#10': 32, '#12': 28, '1/4': 28, '5/16': 24,
    '3/8': 24, '7/16': 20, '1/2': 20, '9/16': 18, '5/8': 18, '3/4': 16, '7/8': 14, '1': 12, '9/8': 12, '5/4': 12, '11/8': 12, '3/2': 12,
  },
} // biome-ignore format: a table reads better in rows

/** Outside diameter in millimetres and threads to the inch by the pipe's size in inches (ISO 228-1). */
export const pipe: Readonly<Record<string, readonly [number, number]>> = {
  '1/16': [7.723, 28], '1/8': [9.728, 28], '1/4': [13.157, 19], '3/8': [16.662, 19], '1/2': [20.955, 14], '5/8': [22.911, 14],
  '3/4': [26.441, 14], '7/8': [30.201, 14], '1': [33.249, 11], '5/4': [41.91, 11], '3/2': [47.803, 11], '2': [59.614, 11],
} // biome-ignore format: a table reads better in rows

/** Outside diameter of the pipe in inches and threads to the inch by its size (ASME B1.20.1). */
export const taperPipe: Readonly<Record<string, readonly [number, number]>> = {
  '1/16': [0.3125, 27], '1/8': [0.405, 27], '1/4': [0.54, 18], '3/8': [0.675, 18], '1/2': [0.84, 14], '3/4': [1.05, 14],
  '1': [1.315, 11.5], '5/4': [1.66, 11.5], '3/2': [1.9, 11.5], '2': [2.375, 11.5],
} // biome-ignore format: a table reads better in rows
