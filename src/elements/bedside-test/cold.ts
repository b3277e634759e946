import { css, html, type TemplateResult } from 'lit';
import { COLD_CHALLENGE, COLD_PHASES } from '../../bedside/index.js';
import { LONGEST_SECONDS } from '../../examination/index.js';
import { toggles } from '../common/choices.js';
import type { BedsideHost, Body } from './host.js';
import { bigTime } from './timed.js';

const WARMEST_WATER = 40;
const LONGEST_REWARMING = 120;

/** Colours of the fingers after cold, each with the time it was seen, and the rewarming time. */
export function coldBody(host: BedsideHost<'cold-provocation'>): Body {
  const { cold: words, timer } = host.words.bedside;
  const watch = host.watch('cold');
  const result = host.result();
  const number = (
    field: 'water' | 'immersed' | 'rewarm' | 'white' | 'blue' | 'red',
    label: string,
    unit: string,
    max: number,
    quiet = false,
  ): TemplateResult =>
    host.number({
      id: field,
      label,
      unit,
      max,
      quiet,
      value: result[field],
      set: (value) => host.patch({ [field]: value }),
    });
  const warm = (): void => {
    const minutes = Math.round(watch.elapsed / 6000) / 10;
    watch.reset();
    host.patch({ rewarm: minutes });
  };
  const main = (): void => (watch.running ? warm() : watch.start());
  const template = html`<div class="cold">
    <div class="row">
      ${number('water', words.water, '°C', WARMEST_WATER)}
      ${number('immersed', words.immersed, 's', LONGEST_SECONDS)}
      <p class="hint">${words.usual(COLD_CHALLENGE.celsius, COLD_CHALLENGE.seconds)}</p>
    </div>
    <div class="timed">
      ${bigTime(watch.elapsed, timer, words.since, host.words)}
      <button type="button" class="button solid wide" ?disabled=${!host.editable} @click=${main}>
        ${watch.running ? words.warm : words.start}
      </button>
    </div>
    <div class="phases">
      ${COLD_PHASES.value.map(
        (phase) =>
          html`<div>
            <button
              type="button"
              class="button phase"
              aria-pressed=${result[phase] !== undefined}
              ?disabled=${!host.editable}
              @click=${() => host.patch({ [phase]: watch.running ? watch.seconds : (result[phase] ?? 0), noChange: undefined })}
            >
              ${words.phases[phase]}
            </button>
            ${number(phase, words.phases[phase], 's', LONGEST_SECONDS, true)}
          </div>`,
      )}
    </div>
    <div class="row">
      ${toggles<'noChange'>({
        label: words.noChange,
        options: [['noChange', words.noChange]],
        value: result.noChange ? ['noChange'] : undefined,
        disabled: !host.editable,
        pick: (picked) =>
          host.patch(
            picked
              ? { noChange: true, white: undefined, blue: undefined, red: undefined }
              : { noChange: undefined },
          ),
      })}
      ${number('rewarm', words.rewarm, 'min', LONGEST_REWARMING)}
    </div>
  </div>`;
  return { template, main };
}

export const coldStyles = css`
  .cold .row {
    align-items: end;
  }
  .phases {
    display: grid;
    grid-template-columns: repeat(3, minmax(0, 1fr));
    gap: 12px;
    margin-block-end: 12px;
  }
  .phase {
    inline-size: 100%;
    margin-block-end: 8px;
  }
  @container (max-width: 419px) {
    .phases {
      grid-template-columns: minmax(0, 1fr);
      gap: 4px;
    }
    .phases > div {
      display: flex;
      gap: 8px;
    }
    .phase {
      inline-size: auto;
      flex: 1;
    }
  }
`;
