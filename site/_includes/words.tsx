import type { Balloon, Inline, Mark } from '../../src/pages/cells.ts'
import type { Run } from '../../src/pages/typeset.ts'

const looks: Readonly<Record<Inline['look'], string | null>> = {
  plain: null,
  unit: 'u',
  strong: 'strong',
  path: 'path',
  said: 'said',
  muted: 'muted',
}

/** Words in a line, some of them leading somewhere. */
export const Words = ({ words }: { readonly words: readonly Inline[] }) => <>{words.map(word => one(word))}</>

function one({ text, href, look }: Inline) {
  const name = looks[look]
  const broken =
    look === 'path'
      ? text.split(/(?<=[/.-])(?=.{3})/).map((piece, index) =>
          index === 0 ? (
            piece
          ) : (
            <>
              <wbr />
              {piece}
            </>
          ),
        )
      : text
  if (href !== null)
    return (
      <a href={href} class={name}>
        {broken}
      </a>
    )
  if (name === null) return <>{broken}</>
  return <span class={name}>{broken}</span>
}

/** A figure: digits, and units muted. */
export const Figure = ({ runs }: { readonly runs: readonly Run[] }) => (
  <span class="n">{runs.map(run => (run.unit ? <span class="u">{run.text}</span> : run.text))}</span>
)

/** The circle with a session's number, or the box with a word. */
export const BalloonMark = ({ balloon }: { readonly balloon: Balloon }) => (
  <span class={balloon.square ? 'b sq' : 'b'}>
    <span class="vh">{balloon.says.replace(balloon.text, '')}</span>
    {balloon.text}
  </span>
)

/** A verdict: its shape and its word, always both. */
export const VerdictMark = ({ mark, big }: { readonly mark: Mark; readonly big?: boolean }) => {
  const name = `v ${mark.verdict}${big === true ? ' big' : ''}`
  const inside = (
    <>
      <Shape name={mark.verdict} />
      <span>{mark.text}</span>
    </>
  )
  return mark.href === null ? (
    <span class={name}>{inside}</span>
  ) : (
    <a class={name} href={mark.href}>
      {inside}
    </a>
  )
}

/** A shape from the sheet of shapes at the head of the page. */
export const Shape = ({ name }: { readonly name: string }) => (
  <svg class="shape" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
    <use href={`#s-${name}`} />
  </svg>
)
