import { css } from 'lit';

/**
 * Sets a slide closer where its words would run over its lower edge: a language that is longer, a question with a caution. Everything
 * on a slide scales with it, so this holds at every size of the window.
 */
export function fitSlides(root: ParentNode): void {
  for (const step of root.querySelectorAll('.step')) {
    step.removeAttribute('data-close');
    step.toggleAttribute('data-close', step.scrollHeight > step.clientHeight + 1);
  }
}

/** A slide set closer; still nothing smaller than 28. */
export const closeStyles = css`
  [data-close] h2 {
    font-size: calc(58 * var(--u));
    line-height: calc(64 * var(--u));
  }
  [data-close] .how {
    margin-block: calc(6 * var(--u)) calc(12 * var(--u));
    font-size: calc(31 * var(--u));
    line-height: calc(39 * var(--u));
  }
  [data-close] .question {
    margin-block-end: calc(12 * var(--u));
    padding-block: calc(8 * var(--u));
    font-size: calc(30 * var(--u));
    line-height: calc(38 * var(--u));
  }
  [data-close] .meanings li {
    padding-block: calc(5 * var(--u));
    font-size: calc(29 * var(--u));
    line-height: calc(36 * var(--u));
  }
  [data-close] .caution {
    margin-block-start: calc(12 * var(--u));
    font-size: calc(29 * var(--u));
    line-height: calc(36 * var(--u));
  }
  [data-close] .truth {
    font-size: calc(32 * var(--u));
    line-height: calc(40 * var(--u));
  }
  [data-close] .answer {
    font-size: calc(29 * var(--u));
    line-height: calc(37 * var(--u));
  }
  [data-close] .found li {
    font-size: calc(30 * var(--u));
    line-height: calc(37 * var(--u));
  }
  [data-close] :is(.found.many, .listed .found) li {
    font-size: calc(28 * var(--u));
    line-height: calc(34 * var(--u));
  }
  [data-close] .reading {
    font-size: calc(28 * var(--u));
    line-height: calc(34 * var(--u));
  }
  [data-close].listed .picture {
    block-size: calc(0.65 * var(--_tall) * var(--u));
  }
  [data-close] .seen {
    gap: calc(12 * var(--u));
  }
`;
