import { type Lesson, type LessonStep, recordOf, type StepId } from '../../lesson/index.js';
import type { Examination } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { PartMessages } from '../../locale/parts.js';
import { conclusionOf, itemsOf, type ReportItem } from '../../report/index.js';

/** The words of every layer that a lesson speaks in. */
export interface Speech {
  readonly messages: Messages;
  readonly parts: PartMessages;
  /** Tag of the author's texts. */
  readonly tag: string;
}

/** One finding as a line. */
export interface SaidFinding {
  readonly text: string;
  readonly weight: ReportItem['weight'];
}

function lineOf({ line }: ReportItem, { messages, parts }: Speech): string {
  if (line.code === 'delay') return messages.localisation.finding(line.finding);
  if (line.code === 'mark') return line.note ?? '';
  return parts.whole
    .summary([{ id: 'pulses', lines: [line] }])
    .flatMap(({ lines }) => lines)
    .join(' ');
}

/** What a record says, line by line. */
export function findingsSaid(record: Examination, speech: Speech): readonly SaidFinding[] {
  return Object.values(itemsOf(record))
    .flat()
    .map((item) => ({ text: lineOf(item, speech), weight: item.weight }))
    .filter(({ text }) => text !== '');
}

/** What the findings revealed so far come to, a sentence a limb; empty while nothing speaks for an occlusion. */
export function readingSaid(record: Examination, { messages }: Speech): readonly string[] {
  const { limbs, everywhere } = conclusionOf(record, []);
  if (everywhere) return [messages.rule.lead(everywhere)];
  return limbs.map(({ where, rule }) =>
    where ? messages.localisation.headline(where) : messages.rule.lead(rule),
  );
}

/** Records of a lesson that are asked for again at every rendering: those of the screen and of the slide after it. */
const MOST_KEPT = 8;
const kept = new WeakMap<Lesson, Map<string, Examination>>();

/** The record that these reveals have built, the same object each time, so that it is read once. */
export function shownRecord(lesson: Lesson, revealed: readonly StepId[]): Examination {
  const records = kept.get(lesson) ?? new Map<string, Examination>();
  kept.set(lesson, records);
  const key = [...revealed].sort().join('|');
  const record = records.get(key) ?? recordOf(lesson, revealed);
  records.delete(key);
  records.set(key, record);
  if (records.size > MOST_KEPT) records.delete(records.keys().next().value!);
  return record;
}

/** The caution of a step: that of its site or test before the one of its kind. */
export function cautionOf({ act }: LessonStep, { parts: { lesson: words } }: Speech): string | undefined {
  const { cautions } = words;
  if (act.kind === 'pulse') {
    const own = cautions[act.place.site];
    return own ?? (MAY_EXPAND.includes(act.place.site) ? cautions.pulse : undefined);
  }
  if (act.kind === 'test') return cautions[act.test];
  return cautions[act.kind];
}

/** Where an aneurysm is commonest, so that the room is told there and not at every pulse. */
const MAY_EXPAND: readonly string[] = ['abdominal-aorta', 'femoral', 'popliteal'];
