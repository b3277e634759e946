import { css, html, nothing, type TemplateResult } from 'lit';
import { COSTOCLAVICULAR_HOLD, HYPERABDUCTION_HOLD, SCALENE_HOLD } from '../../bedside/index.js';
import {
  type BedsideTestId,
  type Grade,
  LONGEST_SECONDS,
  OUTLET_SYMPTOMS,
  type OutletPosition,
  type OutletSymptom,
  SCALENE_WAYS,
} from '../../examination/index.js';
import { choices, large, optionsOf, toggles } from '../common/choices.js';
import { clockText } from '../limb-stopwatch/watch-controller.js';
import type { BedsideHost, Body } from './host.js';

export type PositionTestId = Extract<BedsideTestId, 'scalene' | 'hyperabduction' | 'costoclavicular'>;

const HOLD: Record<PositionTestId, number> = {
  scalene: SCALENE_HOLD.value,
  hyperabduction: HYPERABDUCTION_HOLD.value,
  costoclavicular: COSTOCLAVICULAR_HOLD.value,
};

/**
 * Pulse before and in one position, what was felt, and how long it was held.
 * @param at its path within the result of a side
 */
function position(
  host: BedsideHost<PositionTestId>,
  heading: string | undefined,
  purpose: string,
  found: OutletPosition,
  at: readonly string[],
  set: (fields: Partial<OutletPosition>) => void,
): TemplateResult {
  const { bedside: words } = host.words;
  const hold = HOLD[host.test];
  const keep = (seconds: number): void => set({ seconds });
  const watch = host.watch(`hold-${purpose}`, { countdown: hold * 1000, over: () => keep(hold) });
  const named = (what: string): string => (heading ? `${what}, ${heading}` : what);
  const grade = (field: 'before' | 'during', what: string): TemplateResult =>
    html`<span class="hint" aria-hidden="true">${what}</span> ${host.known([...at, field], named(what), () =>
        choices<Grade>({
          label: named(what),
          options: optionsOf(host.mapWords.examination.grades),
          value: found[field],
          disabled: !host.editable,
          pick: (picked) => set({ [field]: picked }),
        }),
      )}`;
  return html`<section class="position" aria-label=${heading ?? words.how[host.test].name}>
    ${heading ? html`<h4>${large(heading)}</h4>` : nothing}
    <div>${grade('before', words.position.before)}</div>
    <div>${grade('during', words.position.during)}</div>
    <div>
      <span class="hint" aria-hidden="true">${words.position.symptoms}</span>
      ${host.known([...at, 'symptoms'], named(words.position.symptoms), () =>
        toggles<OutletSymptom>({
          label: named(words.position.symptoms),
          options: optionsOf(
            Object.fromEntries(OUTLET_SYMPTOMS.map((s) => [s, words.symptoms[s]])) as Record<
              OutletSymptom,
              string
            >,
          ),
          value: found.symptoms,
          none: words.position.none,
          disabled: !host.editable,
          pick: (picked) => set({ symptoms: picked }),
        }),
      )}
    </div>
    <div class="row hold">
      <button
        type="button"
        class="button ${watch.running ? 'solid' : ''}"
        ?disabled=${!host.editable}
        @click=${() => {
          if (!watch.running) {
            watch.reset();
            watch.start();
            return;
          }
          const { seconds } = watch;
          watch.reset();
          keep(seconds);
        }}
      >
        ${watch.running ? words.stop : words.position.start}
      </button>
      <span class="middle" role="timer">${clockText(watch.remaining ?? 0)}</span>
      ${host.number({
        id: `${purpose}-seconds`,
        label: named(words.position.hold(hold)),
        unit: 's',
        max: LONGEST_SECONDS,
        value: found.seconds,
        set: (seconds) => set({ seconds }),
      })}
    </div>
  </section>`;
}

/** One position of the arm, or for the scalene manoeuvre three. */
export function positionBody(host: BedsideHost<PositionTestId>): Body {
  if (host.test !== 'scalene') {
    const found = host.result() as OutletPosition;
    return { template: position(host, undefined, 'arm', found, [], (fields) => host.patch(fields)) };
  }
  const result = host.result() as Partial<Record<string, OutletPosition>>;
  const { ways } = host.words.bedside;
  return {
    template: html`<div class="ways">
      ${SCALENE_WAYS.map((way) =>
        position(host, ways[way], way, result[way] ?? {}, [way], (fields) => {
          const next = Object.entries({ ...result[way], ...fields }).filter(
            ([, value]) => value !== undefined,
          );
          host.patch({ [way]: next.length ? Object.fromEntries(next) : undefined });
        }),
      )}
    </div>`,
  };
}

export const positionStyles = css`
  .position {
    display: grid;
    gap: 10px;
    padding-block: 10px;
  }
  .position {
    align-content: start;
    border-block-start: 1px solid var(--_line);
  }
  .ways {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 290px), 1fr));
    column-gap: 24px;
  }
  .position h4 {
    color: var(--_ink);
    font-size: calc(15 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .position .hint {
    display: block;
    margin-block-end: 4px;
  }
  .hold {
    align-items: end;
  }
  .hold .middle {
    min-inline-size: 3em;
  }
  .hold .hint {
    margin-block-end: 0;
  }
`;
