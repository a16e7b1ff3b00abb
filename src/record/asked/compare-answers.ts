/** The answer of a check, as far as it is compared. */
interface Answer {
  readonly check: string
  readonly subject: string
  readonly aspect: string | null
  readonly verdict: string
}

export interface AnswerChange<A> {
  /** Null: it was not asked before. */
  readonly before: A | null
  /** Null: it is asked no more. */
  readonly after: A | null
}

/** Answers that came out otherwise than before, that are new, or that are gone. */
export function compareAnswers<A extends Answer>(before: readonly A[], after: readonly A[]): AnswerChange<A>[] {
  const keyOf = ({ check, subject, aspect }: Answer): string => JSON.stringify([check, subject, aspect])
  const earlier = new Map(before.map(answer => [keyOf(answer), answer]))
  const now = new Set(after.map(keyOf))
  const gone = before.filter(answer => !now.has(keyOf(answer)))
  return [
    ...after.flatMap((answer): AnswerChange<A>[] => {
      const was = earlier.get(keyOf(answer)) ?? null
      return was?.verdict === answer.verdict ? [] : [{ before: was, after: answer }]
    }),
    ...gone.map(answer => ({ before: answer, after: null })),
  ]
}
