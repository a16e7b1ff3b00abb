import { Shape, VerdictMark } from './words.tsx'

const states = [
  ['fitted', 'fitted', 'on the vehicle'],
  ['modified', 'modified', 'cut or changed, on the vehicle'],
  ['trial-fitted', 'trial-fitted', 'was on, is off'],
  ['have', 'made, received', 'in the workshop'],
  ['ordered', 'ordered', 'paid, not here'],
  ['gone', 'removed, rejected, returned, sold, scrapped', 'gone'],
] as const

const verdicts = [
  ['pass', 'within its limit'],
  ['marginal', 'the limit lies within what the result can be'],
  ['fail', 'beyond its limit'],
  ['missing', 'a figure was never written'],
  ['waived', 'beyond the usual limit, within the builder’s own, with a reason'],
] as const

/** What the marks on a page mean. */
export const Keys = ({ of }: { readonly of: 'lines' | 'states' | 'verdicts' }) => {
  if (of === 'lines')
    return (
      <ul class="key">
        <li>
          <span class="lead written">
            <span class="ln" />
          </span>{' '}
          written by the builder
        </li>
        <li>
          <span class="lead worked">
            <span class="ln" />
          </span>{' '}
          worked out
        </li>
        <li>
          <span class="lead assumed">
            <span class="ln" />
          </span>{' '}
          assumed
        </li>
        <li>
          <span class="lead missing">
            <span class="ln" />
          </span>{' '}
          not written yet
        </li>
      </ul>
    )
  if (of === 'states')
    return (
      <ul class="key">
        {states.map(([shape, word, means]) => (
          <li>
            <span class="st">
              <Shape name={shape} />
              <span>{word}</span>
            </span>{' '}
            <span class="muted">{means}</span>
          </li>
        ))}
      </ul>
    )
  return (
    <ul class="key">
      {verdicts.map(([verdict, means]) => (
        <li>
          <VerdictMark mark={{ verdict, text: verdict, href: null }} /> <span class="muted">{means}</span>
        </li>
      ))}
    </ul>
  )
}
