import { css, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Side } from '../../anatomy/index.js';
import {
  HIGHEST_PRESSURE,
  NO_PRESSURE,
  type NoPressure,
  type Pressure,
  type PressureUnit,
} from '../../examination/index.js';
import { fromMmHg, toMmHg } from '../../pressures/index.js';
import type { PartMessages } from '../../locale/parts.js';
import { ICONS } from '../common/icons.js';
import { typedNumber } from '../common/fields.js';
import { option } from '../common/option.js';
import { typed } from '../common/typed.js';
import type { Refusal, Typing } from '../common/typing.js';

/** One field of the table of pressures. */
export interface PressureCell {
  readonly id: string;
  /** The place in words, without the side. */
  readonly place: string;
  readonly side: Side;
  readonly value: Pressure | undefined;
  readonly unit: PressureUnit;
  /** Whether an index was worked out from it. */
  readonly used: boolean;
  readonly disabled: boolean;
  readonly refusal: Refusal | undefined;
  readonly words: PartMessages;
  /** Why a valid number is refused here. */
  readonly objection: (mmHg: number | undefined) => string | undefined;
  readonly set: (value: Pressure | undefined) => boolean | void;
  readonly typing: Typing;
}

/** Enter moves to the next field of the table. */
function onward(event: KeyboardEvent): void {
  if (event.key !== 'Enter') return;
  const input = event.target as HTMLInputElement;
  const all = [...(input.getRootNode() as ShadowRoot).querySelectorAll<HTMLInputElement>('td input')].filter(
    (i) => i.checkVisibility(),
  );
  const next = all[all.indexOf(input) + 1];
  event.preventDefault();
  if (next) next.focus();
  else input.blur();
  next?.select();
}

/** A field for a pressure, with a list of reasons why there is no number. */
export function pressureCell(c: PressureCell): TemplateResult {
  const { pressures: words } = c.words;
  const name = words.field(c.place, c.side);
  const reason = typeof c.value === 'string' ? c.value : undefined;
  const number = typeof c.value === 'number' ? words.number(c.value, c.unit) : '';
  const pressure = (text: string): number | undefined | null => {
    const entered = typedNumber(text);
    const mmHg = entered === undefined || entered === null ? entered : toMmHg(entered, c.unit);
    return mmHg !== undefined && mmHg !== null && mmHg > HIGHEST_PRESSURE ? null : mmHg;
  };
  const take = (text: string): (() => boolean | void) | undefined => {
    const mmHg = pressure(text);
    return mmHg === null || c.objection(mmHg) ? undefined : () => c.set(mmHg);
  };
  const complain = (text: string): string => {
    const highest = String(fromMmHg(HIGHEST_PRESSURE, c.unit));
    return c.objection(pressure(text) ?? undefined) ?? words.refused(name, text, highest, c.unit);
  };
  return html`<td>
    <span class="cell ${c.used ? 'used' : ''}">
      ${
        reason
          ? html`<span class="why">${words.noPressure[reason]}</span>`
          : html`<input
              inputmode=${c.unit === 'kPa' ? 'decimal' : 'numeric'}
              autocomplete="off"
              aria-label=${name}
              aria-invalid=${c.refusal ? 'true' : nothing}
              aria-describedby=${c.refusal ? `refused-${c.id}` : nothing}
              .value=${live(c.typing.text(c.id) ?? number)}
              ?disabled=${c.disabled}
              @keydown=${onward}
              ${typed(c.typing, c.id, take, complain)}
            />`
      }
      <span class="caret">${ICONS.down}</span>
      <select
        aria-label=${words.whyFor(name)}
        ?disabled=${c.disabled}
        @input=${(event: Event) => event.stopPropagation()}
        @change=${(event: Event) => {
          event.stopPropagation();
          const picked = (event.target as HTMLSelectElement).value as NoPressure | '';
          c.set(picked || undefined);
        }}
      >
        ${option('', words.measured, !reason)}
        ${NO_PRESSURE.map((r) => option(r, words.noPressure[r], r === reason))}
      </select>
    </span>
  </td>`;
}

export const cellStyles = css`
  table {
    border-collapse: collapse;
    inline-size: 100%;
  }
  th {
    padding: 3px 12px 3px 0;
    text-align: start;
    font-weight: 400;
  }
  thead th {
    padding-block-end: 4px;
    text-align: center;
    font-weight: 700;
    font-size: calc(16 * var(--_text));
  }
  td {
    inline-size: 128px;
    padding: 3px 4px;
  }
  .cell {
    position: relative;
    display: flex;
    min-block-size: 46px;
    border: 1px solid var(--_edge);
    border-radius: 6px;
    background: var(--_paper);
  }
  .cell:has([aria-invalid]) {
    border: 2px dashed var(--_ink);
  }
  .cell input {
    flex: 1;
    inline-size: 0;
    min-block-size: 44px;
    padding-inline: 32px 0;
    border: 0;
    border-radius: 6px;
    background: transparent;
    text-align: center;
    font-size: calc(18 * var(--_text));
  }
  .cell.used input {
    font-weight: 600;
  }
  .cell.used::after {
    content: '';
    position: absolute;
    inset-block-end: 7px;
    inset-inline: calc(50% - 18px);
    block-size: 2px;
    background: var(--_pulse);
    pointer-events: none;
  }
  .cell .why {
    flex: 1;
    align-self: center;
    padding-inline-start: 8px;
    font-size: calc(13 * var(--_text));
    line-height: calc(16 * var(--_text));
  }
  .cell select {
    appearance: none;
    inline-size: 32px;
    padding: 0;
    border: 0;
    border-radius: 6px;
    background: transparent;
    color: transparent;
    cursor: pointer;
  }
  .cell .caret {
    position: absolute;
    inset-block: 12px auto;
    inset-inline-end: 6px;
    color: var(--_edge);
    pointer-events: none;
  }
  .cell option {
    color: var(--_ink);
    background: var(--_paper);
  }
  @container (max-width: 479px) {
    td {
      inline-size: 100px;
    }
    .cell input {
      padding-inline: 6px 0;
    }
    .cell.used::after {
      inset-inline: calc(50% - 30px) calc(50% - 2px);
    }
  }
  @media (forced-colors: active) {
    .cell .caret {
      color: ButtonText;
    }
  }
`;
