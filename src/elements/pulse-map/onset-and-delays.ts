import { html, type TemplateResult } from 'lit';
import { type Limb, LIMBS, SIDES } from '../../anatomy/index.js';
import {
  ARM_DELAYS,
  clearLimb,
  fillFromOtherSide,
  LEG_DELAYS,
  ONSETS,
  setDelays,
  setOnset,
} from '../../examination/index.js';
import { selectField } from '../common/select.js';
import type { Recorder } from './recorder.js';
import type { Session } from './session.js';

function choice<T extends string>(
  label: string,
  options: readonly (readonly [T, string])[],
  chosen: T | undefined,
  editable: boolean,
  notStated: string,
  pick: (value: T | undefined) => void,
): TemplateResult {
  return selectField<T>({
    label,
    classes: ['', 'field'],
    empty: notStated,
    options,
    value: chosen,
    disabled: !editable,
    set: pick,
  });
}

/** Onset, and the pulse delays between the arms and between arm and leg. */
export function renderOnsetAndDelays(session: Session): TemplateResult {
  const { examination, editable } = session;
  const { map, anatomy } = session.allWords;
  const { delays = {} } = examination;
  return html`<div class="fields">
    ${choice(
      map.onset,
      ONSETS.map((onset) => [onset, map.onsetWord(onset)] as const),
      examination.onset,
      editable,
      map.notStated,
      (onset) => session.edit(setOnset(examination, onset)),
    )}
    ${choice(
      map.radioRadial,
      ARM_DELAYS.map((delay) => [delay, map.radioRadialOptions[delay]] as const),
      delays.radioRadial,
      editable,
      map.notStated,
      (radioRadial) => session.edit(setDelays(examination, { radioRadial })),
    )}
    ${SIDES.map((side) =>
      choice(
        map.radioFemoral(anatomy.sides[side]),
        LEG_DELAYS.map((delay) => [delay, map.radioFemoralOptions[delay]] as const),
        delays.radioFemoral?.[side],
        editable,
        map.notStated,
        (delay) =>
          session.edit(setDelays(examination, { radioFemoral: { ...delays.radioFemoral, [side]: delay } })),
      ),
    )}
  </div>`;
}

/** Buttons for a whole limb: fill blank sites from the other side, or clear it. */
export function renderLimbActs(session: Session, recorder: Recorder): TemplateResult {
  const { editable } = session;
  const { map } = session.allWords;
  const fill = (limb: Limb): void =>
    recorder.whole(fillFromOtherSide(session.examination, limb), (changed) =>
      changed ? map.limbFilled(limb) : map.limbUnchanged(limb),
    );
  const clear = (limb: Limb): void =>
    recorder.whole(clearLimb(session.examination, limb), (changed) =>
      changed ? map.limbCleared(limb) : map.limbUnchanged(limb),
    );
  return html`<div class="limbs">
    ${LIMBS.map(
      (limb) =>
        html`<button type="button" class="button" ?disabled=${!editable} @click=${() => fill(limb)}>
            ${map.fillLimb(limb)}
          </button>
          <button type="button" class="button" ?disabled=${!editable} @click=${() => clear(limb)}>
            ${map.clearLimb(limb)}
          </button>`,
    )}
  </div>`;
}
