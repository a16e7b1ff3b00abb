/** No document could be made; the message says what is missing and what to do. */
export class PaperError extends Error {}
