import { html, nothing, type TemplateResult } from 'lit';
import { fold } from '../common/fold.js';
import { later } from './fetched.js';
import type { Recorder } from './recorder.js';
import type { Session } from './session.js';

/**
 * What is folded away below the figure: onset and delays, and acts on whole limbs. One that is opened before its content has been
 * fetched fills once it is there.
 */
export function renderFolds(session: Session, recorder: Recorder): TemplateResult {
  const { examination, words } = session;
  // Opens when something is recorded, and never closes by itself.
  const open = examination.onset !== undefined || examination.delays !== undefined;
  return html`${fold(words.map.onsetAndDelays, open, () => later.part?.renderOnsetAndDelays(session) ?? nothing)}
  ${fold(words.map.wholeLimbs, false, () => later.part?.renderLimbActs(session, recorder) ?? nothing)}`;
}
