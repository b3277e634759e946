import { css, html, nothing, type TemplateResult } from 'lit';
import { SIDES, type Side } from '../../anatomy/index.js';
import { BEAT_SECONDS, beatAt } from '../../bedside/index.js';
import { DIAL, dialDash } from '../../drawing/bedside-figures.js';
import {
  type Grade,
  LONGEST_SECONDS,
  OUTLET_SYMPTOMS,
  type OutletSymptom,
  type StopReason,
} from '../../examination/index.js';
import { choices, large, optionsOf } from '../common/choices.js';
import { selectField } from '../common/select.js';
import { clockText } from '../limb-stopwatch/watch-controller.js';
import type { Beat } from './beat.js';
import type { BedsideHost, Body } from './host.js';

/** Both arms up for three minutes: a dial, a beat, and when each symptom was first felt on each side. */
export function stressBody(host: BedsideHost<'arm-stress'>, beat: Beat): Body {
  const { stress: words } = host.words.bedside;
  const full = host.limit;
  const watch = host.watch('arms-up', {
    countdown: full * 1000,
    bothSides: true,
    over: () => host.patch({ seconds: full }, ...SIDES),
  });
  const stopNow = (): void => {
    const { seconds } = watch;
    watch.stop();
    host.patch({ seconds }, ...SIDES);
  };
  const begin = (): void => {
    watch.reset(full * 1000);
    watch.start();
  };
  const main = (): void => (watch.running ? stopNow() : begin());
  const half = beatAt(watch.elapsed, BEAT_SECONDS.value);
  const left = clockText(watch.remaining ?? full * 1000);
  const template = html`<div class="stress">
    <div class="dialled">
      <svg
        class="dial"
        viewBox="-110 -110 ${DIAL.box} ${DIAL.box}"
        role="img"
        aria-label=${words.left(left, clockText(full * 1000))}
      >
        <circle class="track" r=${DIAL.radius}></circle>
        <circle
          class="run"
          r=${DIAL.radius}
          stroke-dasharray=${dialDash(watch.elapsed / (full * 1000))}
          transform="rotate(-90)"
        ></circle>
        <text class="left" y="8" text-anchor="middle">${left}</text>
        <text class="of" y="34" text-anchor="middle">${words.leftOf(clockText(full * 1000))}</text>
      </svg>
      <div>
        <p class="beat ${watch.running ? half : ''}">
          <span class="dot" aria-hidden="true"></span>${watch.running ? words.beat[half] : words.ready}
        </p>
        <p class="hint">${words.pace(BEAT_SECONDS.value)}</p>
        <button
          type="button"
          class="button"
          aria-pressed=${beat.on}
          @click=${() => {
            beat.toggle();
            host.requestUpdate();
          }}
        >
          ${beat.on ? words.soundOn : words.soundOff}
        </button>
      </div>
    </div>
    <button type="button" class="button solid wide" ?disabled=${!host.editable} @click=${main}>
      ${watch.running ? words.stop : words.start}
    </button>
    ${watch.over ? html`<p role="status">${words.over}</p>` : nothing}
    ${felt(host, () => (watch.running ? watch.seconds : undefined))} ${pulses(host)}
  </div>`;
  return { template, main };
}

/** Onset of each symptom, side by side; a press during the test records the time. */
function felt(host: BedsideHost<'arm-stress'>, now: () => number | undefined): TemplateResult {
  const { bedside: words } = host.words;
  const { anatomy } = host.mapWords;
  const mark = (symptom: OutletSymptom, side: Side): void => {
    const before = host.result(side).felt;
    const at = before?.[symptom];
    const next = {
      ...before,
      [symptom]: at === undefined ? (now() ?? host.result(side).seconds ?? 0) : undefined,
    };
    const left = Object.entries(next).filter(([, value]) => value !== undefined);
    host.patch({ felt: left.length ? Object.fromEntries(left) : undefined, nothingFelt: undefined }, side);
  };
  const cell = (symptom: OutletSymptom, side: Side): TemplateResult => {
    const at = host.result(side).felt?.[symptom];
    const name = words.stress.feltAt(words.symptoms[symptom], anatomy.sides[side]);
    return html`<td>
      <button
        type="button"
        class="button mark"
        aria-pressed=${at !== undefined}
        aria-label=${at === undefined ? name : `${name}: ${clockText(at * 1000)}`}
        ?disabled=${!host.editable}
        @click=${() => mark(symptom, side)}
      >
        ${at === undefined ? words.stress.mark : clockText(at * 1000)}
      </button>
    </td>`;
  };
  return html`<table class="felt">
    <caption>
      ${words.stress.felt}
    </caption>
    <thead>
      <tr>
        <td></td>
        ${SIDES.map((side) => html`<th scope="col" aria-label=${anatomy.sides[side]}>${anatomy.sideLetters[side]}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${OUTLET_SYMPTOMS.map(
        (symptom) =>
          html`<tr>
            <th scope="row">${large(words.symptoms[symptom])}</th>
            ${SIDES.map((side) => cell(symptom, side))}
          </tr>`,
      )}
      <tr>
        <th scope="row">${words.stress.nothing}</th>
        ${SIDES.map((side) => {
          const { nothingFelt } = host.result(side);
          return html`<td>
            <button
              type="button"
              class="button mark"
              aria-pressed=${nothingFelt === true}
              aria-label="${words.stress.feltAt(words.stress.nothing, anatomy.sides[side])}${nothingFelt ? `: ${words.stress.said}` : ''}"
              ?disabled=${!host.editable}
              @click=${() => host.patch({ nothingFelt: nothingFelt ? undefined : true, felt: undefined }, side)}
            >
              ${nothingFelt ? words.stress.said : words.stress.mark}
            </button>
          </td>`;
        })}
      </tr>
      <tr>
        <th scope="row">${words.stress.why}</th>
        ${SIDES.map(
          (side) =>
            html`<td>
              ${host.known(
                ['stopped'],
                words.stress.feltAt(words.stress.why, anatomy.sides[side]),
                () =>
                  selectField<StopReason>({
                    label: words.stress.feltAt(words.stress.why, anatomy.sides[side]),
                    quiet: true,
                    empty: '–',
                    options: optionsOf(words.stops),
                    value: host.result(side).stopped,
                    disabled: !host.editable,
                    set: (stopped) => host.patch({ stopped }, side),
                  }),
                { side },
              )}
            </td>`,
        )}
      </tr>
    </tbody>
  </table>`;
}

/** The radial pulse of the shown side before and with the arm up, and the time by hand. */
function pulses(host: BedsideHost<'arm-stress'>): TemplateResult {
  const { bedside: words } = host.words;
  const result = host.result();
  const grade = (field: 'before' | 'during', what: string): TemplateResult =>
    html`<div>
      <span class="hint" aria-hidden="true">${what}</span>
      ${host.known([field], what, () =>
        choices<Grade>({
          label: what,
          options: optionsOf(host.mapWords.examination.grades),
          value: result[field],
          disabled: !host.editable,
          pick: (picked) => host.patch({ [field]: picked }),
        }),
      )}
    </div>`;
  return html`<div class="position">
    ${grade('before', words.position.before)} ${grade('during', words.position.during)}
    ${host.number({
      id: 'seconds',
      label: words.stress.up,
      unit: 's',
      max: LONGEST_SECONDS,
      value: result.seconds,
      set: (seconds) => host.patch({ seconds }),
    })}
  </div>`;
}

export const stressStyles = css`
  .dialled {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 12px 24px;
  }
  .dial {
    inline-size: 176px;
    block-size: 176px;
  }
  .dial circle {
    fill: none;
    stroke-width: 8;
  }
  .dial .track {
    stroke: var(--_line);
  }
  .dial .run {
    stroke: var(--_pulse);
  }
  .dial .left {
    font-size: calc(46 * var(--_text));
    font-weight: 600;
    fill: var(--_ink);
  }
  .dial .of {
    font-size: calc(15 * var(--_text));
    fill: var(--_ink-2);
  }
  .beat {
    display: flex;
    align-items: center;
    gap: 10px;
    font-size: calc(22 * var(--_text));
    line-height: calc(28 * var(--_text));
    font-weight: 600;
  }
  .beat .dot {
    inline-size: 16px;
    block-size: 16px;
    border-radius: 50%;
    border: 2px solid var(--_pulse);
  }
  .beat.close .dot {
    background: var(--_pulse);
    outline: 3px solid var(--_line);
  }
  .stress .button {
    margin-block-start: 8px;
  }
  .felt {
    inline-size: 100%;
    max-inline-size: 460px;
    margin-block: 12px;
    border-collapse: collapse;
  }
  .felt caption {
    text-align: start;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 600;
    color: var(--_ink-2);
  }
  .felt th {
    text-align: start;
    font-weight: 400;
  }
  .felt thead th {
    text-align: center;
    font-weight: 700;
    color: var(--_ink-2);
  }
  .felt td {
    inline-size: 112px;
    padding: 3px;
  }
  .felt .mark {
    inline-size: 100%;
    margin: 0;
    padding: 0;
  }
`;
