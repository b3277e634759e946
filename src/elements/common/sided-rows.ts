import { css, html, noChange, nothing, type TemplateResult } from 'lit';
import { SIDES, type Side } from '../../anatomy/index.js';
import type { PartMessages } from '../../locale/parts.js';
import { choices } from './choices.js';

/** One finding of both limbs of a kind. A side may have none: its cell stays empty. */
export interface SidedRow {
  readonly label: string;
  /** How it is done, in a line under the label. */
  readonly how?: string;
  readonly cell: (side: Side) => TemplateResult | typeof nothing;
}

/** Rows under one heading; a folded group shows its heading only, until it holds something or is opened. */
export interface SidedGroup {
  readonly heading: string;
  readonly rows: readonly SidedRow[];
  readonly folded?: boolean;
}

/** Moves the focus to the same side's next or previous finding. */
function moveAlong(event: KeyboardEvent): void {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const from = event.target as HTMLElement;
  const cell = from.closest<HTMLElement>('.cell');
  if (!cell || from.localName === 'select' || event.altKey || event.ctrlKey) return;
  const all = (event.currentTarget as HTMLElement).querySelectorAll<HTMLElement>(
    `.cell[data-side="${cell.dataset['side']}"]`,
  );
  const cells = [...all].filter(
    (c) => c.checkVisibility() && c.querySelector('button:not(:disabled), input:not(:disabled), select'),
  );
  const next = cells[cells.indexOf(cell) + (event.key === 'ArrowDown' ? 1 : -1)];
  const target = next?.querySelector<HTMLElement>('[tabindex="0"], input, select');
  if (!target) return;
  event.preventDefault();
  target.focus();
}

function group(
  { heading, rows, folded }: SidedGroup,
  words: PartMessages,
  foldable: boolean,
): TemplateResult {
  const { whole } = words;
  const grid = html`<div class="rows">
    ${foldable ? html`<span class="corner"></span>` : html`<h3 class="corner">${heading}</h3>`}
    ${SIDES.map(
      (side) =>
        html`<span class="side-head ${side}" aria-hidden="true"
          ><b>${whole.letters[side]}</b> ${whole[side]}</span
        >`,
    )}
    ${rows.map((row) => {
      const cells = SIDES.map((side) => ({ side, content: row.cell(side) }));
      if (cells.every(({ content }) => content === nothing)) return nothing;
      const without = cells.filter(({ content }) => content === nothing).map(({ side }) => `no-${side}`);
      return html`<span class="row-label ${without.join(' ')}" aria-hidden="true"
          >${row.label}${row.how ? html`<small class="hint">${row.how}</small>` : nothing}</span
        >
        ${cells.map(({ side, content }) => html`<div class="cell ${side}" data-side=${side}>${content}</div>`)}`;
    })}
  </div>`;
  if (!foldable) return grid;
  return html`<details class="fold" ?open=${!folded || noChange}>
    <summary>${heading}</summary>
    ${grid}
  </details>`;
}

/**
 * Findings of the right and the left limb side by side, one row per finding; in a narrow container, one limb at a
 * time. Up and Down move within a side.
 */
export function sidedRows(
  groups: readonly SidedGroup[],
  shown: Side,
  show: (side: Side) => void,
  words: PartMessages,
): TemplateResult {
  const { whole } = words;
  return html`<div class="sided show-${shown}" @keydown=${moveAlong}>
    <div class="side-switch">
      ${choices<Side>({
        label: whole.limb,
        options: SIDES.map((side) => [side, whole[side]] as const),
        value: shown,
        disabled: false,
        pick: (side) => side && show(side),
      })}
    </div>
    ${groups.map((g) => group(g, words, g.folded !== undefined))}
  </div>`;
}

export const sidedRowStyles = css`
  .sided .rows {
    display: grid;
    grid-template-columns: minmax(88px, 148px) minmax(0, 1fr) minmax(0, 1fr);
    align-items: stretch;
    padding-block-end: 16px;
  }
  .corner,
  .side-head {
    padding-block: 6px;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    color: var(--_ink-2);
  }
  h3.corner {
    color: var(--_ink);
    font-size: calc(15 * var(--_text));
  }
  .side-head b {
    color: var(--_ink);
  }
  .row-label {
    padding-block: 15px 6px;
    padding-inline-end: 12px;
    line-height: calc(20 * var(--_text));
    border-block-start: 1px solid var(--_line);
  }
  .row-label .hint {
    display: block;
  }
  .cell .text {
    max-inline-size: 300px;
  }
  .cell {
    min-block-size: 53px;
    padding-block: 4px;
    padding-inline-end: 16px;
    border-block-start: 1px solid var(--_line);
  }
  .side-switch {
    display: none;
  }
  @container (max-width: 699px) {
    .side-switch {
      position: sticky;
      z-index: 1;
      inset-block-start: var(--_sticky, 0);
      display: block;
      padding-block: 6px;
      background: var(--_paper);
    }
    .side-switch .chip {
      flex: 1;
      justify-content: center;
    }
    .sided .rows {
      grid-template-columns: minmax(0, 1fr);
    }
    .corner:empty,
    .side-head,
    .cell:empty,
    .show-right .cell.left,
    .show-left .cell.right,
    .show-right .row-label.no-right,
    .show-left .row-label.no-left {
      display: none;
    }
    .row-label {
      padding-block: 8px 0;
      font-size: calc(14 * var(--_text));
    }
    .cell {
      min-block-size: 0;
      border-block-start: 0;
      padding-block: 4px 8px;
      padding-inline-end: 0;
    }
  }
`;
