import { small } from './number-vocabulary.ts'

/** Words in lower case that may begin a number that is spelled out. */
export const numberBeginnings: readonly string[] = ['a', 'an', 'half', 'quarter', 'minus', 'point', ...small.keys()]
