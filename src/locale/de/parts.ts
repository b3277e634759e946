import type { PartMessages } from '../languages.js';
import { bedside } from './bedside.js';
import { chart } from './chart.js';
import { comparison } from './comparison.js';
import { compression } from './compression.js';
import { context } from './context.js';
import { exchange } from './exchange.js';
import { flags } from './flags.js';
import { history } from './history.js';
import { inspection } from './inspection.js';
import { letter } from './letter.js';
import { lesson } from './lesson.js';
import { lessonEditor } from './lesson-editor.js';
import { note } from './note.js';
import { practice } from './practice.js';
import { pressures } from './pressures.js';
import { report } from './report.js';
import { staging } from './staging.js';
import { unconfirmed } from './unconfirmed.js';
import { visits } from './visits.js';
import { whole } from './whole.js';

/** German words of the examination around the pulses. */
export const deParts: PartMessages = {
  bedside,
  chart,
  comparison,
  compression,
  context,
  exchange,
  flags,
  history,
  inspection,
  letter,
  lesson,
  lessonEditor,
  note,
  practice,
  pressures,
  report,
  staging,
  unconfirmed,
  visits,
  whole,
};
