/** A file from which no note can be drafted: one sentence that says why, and what to do. */
export class DraftTrouble extends Error {}

/** A number with its thousands set apart: `10,000`. */
export const many = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ',')
