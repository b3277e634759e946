import { html, nothing, type TemplateResult } from 'lit';
import { type Side, SIDES } from '../../anatomy/index.js';
import { BEDSIDE_TEST_IDS, BEDSIDE_TESTS, readBedside } from '../../bedside/index.js';
import type { BedsideTestId, Examination } from '../../examination/index.js';
import type { PartMessages } from '../../locale/parts.js';

export interface TestsView {
  readonly examination: Examination;
  readonly words: PartMessages;
  readonly letters: Readonly<Record<Side, string>>;
  readonly disabled: boolean;
  readonly isOpen: (id: BedsideTestId) => boolean;
  readonly toggle: (id: BedsideTestId) => void;
  readonly test: (id: BedsideTestId, open: boolean) => TemplateResult;
}

/** The bedside tests, legs first: the heading of each tells its result while it is folded. */
export function renderTests(view: TestsView): TemplateResult {
  const { bedside: words, whole } = view.words;
  const { bedside } = view.examination;
  return html`<div class="tests">
    ${(['leg', 'arm'] as const).map(
      (limb) =>
        html`<h3>${limb === 'leg' ? whole.legs : whole.arms}</h3>
          ${BEDSIDE_TEST_IDS.filter((id) => BEDSIDE_TESTS[id].limb === limb).map((id) => {
            const said = SIDES.flatMap((side) => {
              const reading = readBedside(id, side, bedside);
              return reading ? [`${view.letters[side]}: ${words.read(id, reading)}`] : [];
            });
            const open = view.isOpen(id);
            return html`<div class="test">
              <button
                type="button"
                class="heading"
                aria-expanded=${open}
                ?disabled=${view.disabled}
                @click=${() => view.toggle(id)}
              >
                ${words.named(id, BEDSIDE_TESTS[id].eponym)}
                ${open ? nothing : html`<span class="hint">${said.join(' ')}</span>`}
              </button>
              ${open || bedside?.[id] ? view.test(id, open) : nothing}
            </div>`;
          })}`,
    )}
  </div>`;
}
