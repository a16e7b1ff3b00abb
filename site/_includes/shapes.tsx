/** Every shape of the record, once a page: verdicts, states of a part, jobs and temporary fixes, the hatching. */
export const Shapes = () => (
  <svg class="defs" aria-hidden="true" focusable="false">
    <defs>
      <pattern id="s-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line class="hatch" x1="0" y1="0" x2="0" y2="6" />
      </pattern>
      <symbol id="s-pass" viewBox="0 0 16 16">
        <circle cx="8" cy="8" r="7.25" class="full" />
        <path d="m4.5 8.4 2.4 2.5 4.7-5.3" class="knock" />
      </symbol>
      <symbol id="s-marginal" viewBox="0 0 16 16">
        <path d="M8 1.6 15 14.2H1z" class="line" />
        <path d="M8 1.6 15 14.2H8z" class="full" />
      </symbol>
      <symbol id="s-fail" viewBox="0 0 16 16">
        <path d="M5 .75h6L15.25 5v6L11 15.25H5L.75 11V5z" class="full" />
        <path d="m5.1 5.1 5.8 5.8m0-5.8-5.8 5.8" class="knock" />
      </symbol>
      <symbol id="s-missing" viewBox="0 0 16 16">
        <circle cx="8" cy="8" r="6.4" class="line dashes" />
      </symbol>
      <symbol id="s-waived" viewBox="0 0 16 16">
        <circle cx="8" cy="8" r="6.6" class="line" />
        <path d="m4.6 8.3 2.3 2.5 4.5-5.1" class="line" />
      </symbol>
      <symbol id="s-fitted" viewBox="0 0 16 16">
        <path d="M2 2h12v12H2z" class="full" />
      </symbol>
      <symbol id="s-modified" viewBox="0 0 16 16">
        <path d="M2 2h6.5v5.5H14V14H2z" class="full" />
      </symbol>
      <symbol id="s-trial-fitted" viewBox="0 0 16 16">
        <path d="M2.6 2.6h10.8v10.8H2.6z" class="line" />
        <path d="M2.6 13.4 13.4 2.6v10.8z" class="full" />
      </symbol>
      <symbol id="s-have" viewBox="0 0 16 16">
        <path d="M2.6 2.6h10.8v10.8H2.6z" class="line" />
      </symbol>
      <symbol id="s-ordered" viewBox="0 0 16 16">
        <path d="M2.6 2.6h10.8v10.8H2.6z" class="line dashes-short" />
      </symbol>
      <symbol id="s-gone" viewBox="0 0 16 16">
        <path d="M2.6 2.6h10.8v10.8H2.6zm0 0 10.8 10.8m0-10.8L2.6 13.4" class="line" />
      </symbol>
      <symbol id="s-open" viewBox="0 0 16 16">
        <rect x="1.8" y="1.8" width="12.4" height="12.4" rx="3" class="line" />
      </symbol>
      <symbol id="s-done" viewBox="0 0 16 16">
        <rect x="1.8" y="1.8" width="12.4" height="12.4" rx="3" class="line" />
        <path d="m4.7 8.3 2.4 2.5 4.4-5.2" class="line" />
      </symbol>
      <symbol id="s-fix" viewBox="0 0 16 16">
        <path d="M4.4 3.2h10.2l-3 9.6H1.4zM6.6 12.6l2.8-9.2m.8 9.2L13 3.4" class="line" />
      </symbol>
      <symbol id="s-fix-gone" viewBox="0 0 16 16">
        <path d="M4.4 3.2h10.2l-3 9.6H1.4zM1.5 3.2l13 9.6" class="line" />
      </symbol>
    </defs>
  </svg>
)
