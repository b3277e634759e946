import { inRegisters, type Otherwise } from '../terms.js';
import { unconfirmedFrom, type UnconfirmedTable } from '../unconfirmed.js';
import { anatomy } from './anatomy.js';
import { whole } from './whole.js';

const counted = (count: number): string => (count === 1 ? '1 finding' : `${count} findings`);

const trade: UnconfirmedTable = {
  title: (when) =>
    when ? `From the visit of ${when}, not confirmed` : 'From the earlier visit, not confirmed',
  left: (count) =>
    `${counted(count)} not confirmed. Not in this record, its reading or its flags until confirmed.`,
  none: 'Everything from the earlier visit is confirmed or recorded anew.',
  anew: 'Measured and timed values, stages, walking distance and onset are never taken over; record them anew.',
  confirm: 'Found again',
  all: (count) => `All ${count} found again`,
  undo: 'Undo',
  confirmed: (count) => `${counted(count)} confirmed.`,
  takenBack: 'Taken back; not confirmed again.',
  trunk: 'trunk',
  patient: 'patient',
  unread: 'The earlier record cannot be read by this version, so nothing is offered from it.',
};

const plain: Otherwise<UnconfirmedTable> = {
  left: (count) => `${count} not checked again yet. They do not count until checked.`,
  anew: 'What is measured or timed, and how far the patient walks, is never taken over.',
};

export const unconfirmed = unconfirmedFrom(inRegisters(trade, plain), { anatomy, summary: whole.summary });
