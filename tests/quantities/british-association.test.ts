import { expect, test } from 'vitest'
import { britishAssociation } from '../../src/quantities/thread-table-british.ts'

// BS 93 defines the British Association thread: the pitch of number n is 0.9 to the power n in millimetres, the diameter
// 6 times the pitch to the power 1.2; the standard rounds the one to hundredths and the other to tenths.
test.each(britishAssociation.map((row, number) => ({ number, ...row })))(
  '$number BA is $diameter mm with a pitch of $pitch mm, as its definition gives',
  ({ number, diameter, pitch }) => {
    const exact = 0.9 ** number
    expect(pitch).toBe(Number(exact.toFixed(2)))
    expect(diameter).toBe(Number((6 * exact ** 1.2).toFixed(1)))
  },
)
