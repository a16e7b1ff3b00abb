import type { Drawing, Stroke } from '../../src/pages/drawing.ts'

/** Prints a drawing. What it may lead to is reached by keyboard, so it is a group and no picture where it has links. */
export const Draw = ({ drawing }: { readonly drawing: Drawing }) => {
  const [title, description] = drawing.id === undefined ? [null, null] : [`${drawing.id}-t`, `${drawing.id}-d`]
  const hasLinks = drawing.strokes.some(stroke => stroke.kind === 'link' && stroke.href !== null)
  return (
    <svg
      class={`dwg ${drawing.look}`}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      role={hasLinks ? 'group' : 'img'}
      aria-labelledby={title}
      aria-describedby={drawing.tells === undefined ? null : description}
    >
      <title id={title}>{drawing.says}</title>
      {drawing.tells === undefined ? null : <desc id={description}>{drawing.tells}</desc>}
      {drawing.strokes.map(stroke => print(stroke))}
    </svg>
  )
}

function print(stroke: Stroke) {
  if (stroke.kind === 'path') return <path class={stroke.look} d={stroke.d} />
  if (stroke.kind === 'circle') return <circle class={stroke.look} cx={stroke.x} cy={stroke.y} r={stroke.r} />
  if (stroke.kind === 'text') {
    const turn = stroke.turn === 0 ? null : `rotate(${stroke.turn} ${stroke.x} ${stroke.y})`
    return (
      <text class={stroke.look} x={stroke.x} y={stroke.y} transform={turn}>
        {stroke.text}
      </text>
    )
  }
  const inside = stroke.strokes.map(print)
  const named = <title>{stroke.says}</title>
  return stroke.href === null ? (
    <g>
      {named}
      {inside}
    </g>
  ) : (
    <a href={stroke.href}>
      {named}
      {inside}
    </a>
  )
}
