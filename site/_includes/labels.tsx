import type { PageLabel, PartOfPage } from '../../src/pages/page-parts.ts'

/** The labels of one kind, which can be printed alone: the section that was chosen is the page's target. */
export const Labels = ({ part }: { readonly part: Extract<PartOfPage, { kind: 'labels' }> }) => (
  <section class={`labels ${part.size}`} id={part.id} aria-labelledby={`${part.id}-name`}>
    <h2 id={`${part.id}-name`}>{part.title}</h2>
    <ul>
      {part.labels.map(label => (
        <Label label={label} />
      ))}
    </ul>
  </section>
)

const Label = ({ label: { name, identifier, of, code } }: { readonly label: PageLabel }) => (
  <li>
    <svg class="qr" viewBox={code.box} role="img" aria-label={code.says}>
      <path d={code.path} />
    </svg>
    <span>
      <strong>{name}</strong>
      <span class="path">{identifier}</span>
      <span class="of">{of}</span>
    </span>
  </li>
)
