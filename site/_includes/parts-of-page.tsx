import type { GivenValue, JobLine, PagePicture, PartOfPage } from '../../src/pages/page-parts.ts'
import { Draw } from './drawing.tsx'
import { raw } from './jsx/jsx-runtime.ts'
import { Keys } from './keys.tsx'
import { Labels } from './labels.tsx'
import { SizedPicture } from './sized-picture.tsx'
import { DataTable, LeaderLine } from './table.tsx'
import { BalloonMark, Shape, VerdictMark, Words } from './words.tsx'

/** One part of a row, whatever it is. */
export const Part = ({ part }: { readonly part: PartOfPage }) => {
  switch (part.kind) {
    case 'heading':
      return part.rank === 2 ? <h2 id={part.id}>{part.text}</h2> : <h3 id={part.id}>{part.text}</h3>
    case 'words':
      return (
        <p class={part.look === 'plain' ? null : part.look}>
          <Words words={part.words} />
        </p>
      )
    case 'note':
      return <div class="said">{raw(part.html)}</div>
    case 'table':
      return <DataTable table={part.table} />
    case 'verdict':
      return (
        <p class="verdict">
          <VerdictMark mark={part.mark} big />
        </p>
      )
    case 'formula':
      return <Formula lines={part.lines} />
    case 'given':
      return (
        <ul class="given">
          {part.values.map(value => (
            <Given value={value} />
          ))}
        </ul>
      )
    case 'drawings':
      return <Drawings part={part} />
    case 'beside':
      return (
        <div class="beside">
          <div>
            {part.left.map(one => (
              <Part part={one} />
            ))}
          </div>
          <div>
            {part.right.map(one => (
              <Part part={one} />
            ))}
          </div>
        </div>
      )
    case 'jobs':
      return (
        <ul class="jobs">
          {part.jobs.map(job => (
            <Job job={job} />
          ))}
        </ul>
      )
    case 'list':
      return (
        <ul class="plain">
          {part.entries.map(words => (
            <li>
              <Words words={words} />
            </li>
          ))}
        </ul>
      )
    case 'pictures':
      return (
        <div class="pictures">
          {part.pictures.map(picture => (
            <Photo picture={picture} />
          ))}
        </div>
      )
    case 'key':
      return <Keys of={part.of} />
    case 'search':
      return (
        <record-search>
          <p class="note">
            <Words words={part.instead} />
          </p>
        </record-search>
      )
    case 'wiring':
      return <WiringFrame part={part} />
    case 'labels':
      return <Labels part={part} />
    case 'signature':
      return (
        <dl class="sign">
          <div>
            <dt>Looked at by</dt>
            <dd />
          </div>
          <div>
            <dt>Date</dt>
            <dd />
          </div>
          <div>
            <dt>Odometer</dt>
            <dd />
          </div>
        </dl>
      )
  }
}

/** A drawing at its own size: where there is less room its frame scrolls, also by keyboard. */
const WiringFrame = ({ part: { drawing, caption } }: { readonly part: Extract<PartOfPage, { kind: 'wiring' }> }) => (
  <figure class="wiring">
    {/* biome-ignore lint/a11y/useSemanticElements: a fieldset belongs to a form */}
    <div class="scroll" tabindex="0" role="group" aria-label={drawing.title}>
      {raw(drawing.svg)}
    </div>
    <figcaption>
      {caption.length === 0 ? null : <Words words={caption} />}
      <details>
        <summary>The drawing in words</summary>
        <ul class="plain">
          {drawing.says.map(sentence => (
            <li>{sentence}</li>
          ))}
        </ul>
      </details>
    </figcaption>
  </figure>
)

/** A long formula scrolls by itself, by keyboard too. */
const Formula = ({
  lines,
}: {
  readonly lines: readonly { readonly mathml: string; readonly says: string; readonly text: string }[]
}) => (
  <ol class="steps">
    {lines.map(line => (
      <li>
        {/* biome-ignore lint/a11y/useSemanticElements: the element for a group is one of forms */}
        <div class="formula" tabindex="0" role="group" aria-label={line.says === '' ? 'Formula' : line.says}>
          {line.mathml === '' ? line.text : raw(line.mathml)}
        </div>
        {line.says === '' ? null : <span class="sub">{line.says}</span>}
      </li>
    ))}
  </ol>
)

const Given = ({ value }: { readonly value: GivenValue }) => (
  <li>
    <span class="sym">
      {raw(value.symbol)}
      <span class="sub">{value.meaning}</span>
    </span>
    <span class="val">
      <LeaderLine leader={value.leader} />
      {value.other === null ? null : <span class="sub">{value.other}</span>}
    </span>
    <span class="src">
      {value.quote === null ? null : <q>{value.quote}</q>}
      {value.why === null ? null : <span class="why">{value.why}</span>}
      <span class="sub">{value.place}</span>
    </span>
  </li>
)

const Drawings = ({ part }: { readonly part: Extract<PartOfPage, { kind: 'drawings' }> }) => (
  <figure>
    <div class={`${part.framed ? 'frame ' : ''}${part.narrow === null ? '' : 'on-wide'}`}>
      <Draw drawing={part.wide} />
    </div>
    {part.narrow === null ? null : (
      <div class={`${part.framed ? 'frame ' : ''}on-narrow`}>
        <Draw drawing={part.narrow} />
      </div>
    )}
    {part.caption.length === 0 ? null : (
      <figcaption>
        <Words words={part.caption} />
      </figcaption>
    )}
  </figure>
)

const Job = ({ job }: { readonly job: JobLine }) => (
  <li id={job.id}>
    <Shape name={job.shape} />
    <span>
      <span class="said">
        <Words words={job.words} />
      </span>
      <span class="state">
        <Words words={job.state} />
        {job.balloon === null ? null : (
          <>
            {' '}
            <a href={job.balloon.href} class="to-balloon">
              <BalloonMark balloon={job.balloon} />
            </a>
          </>
        )}
      </span>
    </span>
  </li>
)

const Photo = ({ picture }: { readonly picture: PagePicture }) => (
  <figure id={picture.id}>
    <a class="large" href={picture.href} aria-label={picture.alternative.trim() === '' ? 'picture, large' : null}>
      <SizedPicture src={picture.href} picture={picture} alternative={picture.alternative} />
    </a>
    {picture.caption.length === 0 ? null : (
      <figcaption>
        <Words words={picture.caption} />
      </figcaption>
    )}
  </figure>
)
