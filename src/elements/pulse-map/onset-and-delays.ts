import { html, type TemplateResult } from 'lit';
import { LIMBS, SIDES } from '../../anatomy/index.js';
import {
  ARM_DELAYS,
  type Examination,
  LEG_DELAYS,
  ONSETS,
  setDelays,
  setOnset,
} from '../../examination/index.js';
import type { ShownMessages } from '../../locale/shown.js';
import { fold } from '../common/fold.js';
import { renderSelect } from '../common/select.js';
import type { Recorder } from './recorder.js';

function choice<T extends string>(
  label: string,
  options: readonly (readonly [T, string])[],
  chosen: T | undefined,
  editable: boolean,
  notStated: string,
  pick: (value: T | undefined) => void,
): TemplateResult {
  return renderSelect<T | ''>({
    label,
    classes: ['', 'field'],
    options: [['', notStated], ...options],
    chosen: chosen ?? '',
    disabled: !editable,
    pick: (value) => pick(value || undefined),
  });
}

/** Onset, and the pulse delays between the arms and between arm and leg. */
export function renderOnsetAndDelays(
  examination: Examination,
  editable: boolean,
  words: ShownMessages,
  edit: (next: Examination) => void,
): TemplateResult {
  const { map } = words;
  const { delays = {} } = examination;
  const open = examination.onset !== undefined || examination.delays !== undefined;
  // Opens when something is recorded, and never closes by itself.
  return fold(
    map.onsetAndDelays,
    open,
    () =>
      html`<div class="fields">
        ${choice(
          map.onset,
          ONSETS.map((onset) => [onset, map.onsetWord(onset)] as const),
          examination.onset,
          editable,
          map.notStated,
          (onset) => edit(setOnset(examination, onset)),
        )}
        ${choice(
          map.radioRadial,
          ARM_DELAYS.map((delay) => [delay, map.radioRadialOptions[delay]] as const),
          delays.radioRadial,
          editable,
          map.notStated,
          (radioRadial) => edit(setDelays(examination, { radioRadial })),
        )}
        ${SIDES.map((side) =>
          choice(
            map.radioFemoral(words.anatomy.sides[side]),
            LEG_DELAYS.map((delay) => [delay, map.radioFemoralOptions[delay]] as const),
            delays.radioFemoral?.[side],
            editable,
            map.notStated,
            (delay) =>
              edit(setDelays(examination, { radioFemoral: { ...delays.radioFemoral, [side]: delay } })),
          ),
        )}
      </div>`,
  );
}

/** Buttons for a whole limb: fill blank sites from the other side, or clear it. */
export function renderLimbActs(editable: boolean, words: ShownMessages, recorder: Recorder): TemplateResult {
  const { map } = words;
  return fold(
    map.wholeLimbs,
    false,
    () =>
      html`<div class="limbs">
        ${LIMBS.map(
          (limb) =>
            html`<button
                type="button"
                class="button"
                ?disabled=${!editable}
                @click=${() => recorder.fillLimb(limb)}
              >
                ${map.fillLimb(limb)}
              </button>
              <button
                type="button"
                class="button"
                ?disabled=${!editable}
                @click=${() => recorder.clearLimb(limb)}
              >
                ${map.clearLimb(limb)}
              </button>`,
        )}
      </div>`,
  );
}
