import { type LimbKind, LIMB_KINDS } from '../anatomy/index.js';
import { emptyExamination, type Examination, FORMAT, unknownFields } from '../examination/index.js';
import { type FieldKind, type Leaf, leavesOf, put } from '../interchange/fields.js';
import { labelOf } from '../interchange/labels.js';
import { messagesFor } from '../locale/index.js';
import { partMessagesFor } from '../locale/parts.js';
import { LESSON_FORMAT, type LessonInput } from './lesson.js';

/** Kinds of value that may tell who, where or when. */
const TELLING: readonly FieldKind[] = ['text', 'instant'];
/** Parts about the making of the record, not about the patient: its state and amendments, and whom one called. */
const ABOUT_THE_RECORD: readonly string[] = ['status', 'amendments', 'calls'];

/** A record to be shown to others, and what was left out of it. */
export interface Nameless {
  readonly examination: Examination;
  /** Codes of the fields that were left out, such as `examiner` or `pulses.note`, each once, in the order of the record. */
  readonly removed: readonly string[];
  /** How many values of later versions were left out, which nobody here can judge. */
  readonly unknown: number;
}

/** Set anew rather than left out: every record and mark has one. */
const ANEW: readonly string[] = ['format', 'marks.id'];

const keeps = ({ kind, path }: Leaf): boolean =>
  !TELLING.includes(kind) && !ABOUT_THE_RECORD.includes(String(path[0]));

/** A list without the entries of which nothing is left. */
const dense = (list: readonly unknown[]): readonly unknown[] => list.filter((entry) => entry !== undefined);

/**
 * What of a record is clinical: words, numbers and marks of the schema stay as they are; free text, points in time, what tells of the
 * record’s making, and everything of later versions goes. A list keeps its other entries, in their order.
 */
export function namelessOf(examination: Examination): Nameless {
  const kept: { marks?: readonly object[] } & Record<string, unknown> = {};
  const removed = new Set<string>();
  for (const leaf of leavesOf(examination)) {
    if (keeps(leaf)) put(kept, leaf.path, leaf.value);
    else if (!ANEW.includes(leaf.field.code)) removed.add(leaf.field.code);
  }
  const marks =
    kept.marks && dense(kept.marks).map((mark, i) => ({ ...(mark as object), id: String(i + 1) }));
  return {
    examination: {
      ...emptyExamination(examination.scale),
      ...kept,
      ...(marks && { marks }),
      format: FORMAT,
    } as Examination,
    removed: [...removed],
    unknown: (examination.carried?.length ?? 0) + unknownFields(examination).length,
  };
}

/** What was left out, each field by its name in a language, once. */
export function removedNames({ removed }: Nameless, tag: string): readonly string[] {
  const words = { map: messagesFor(tag), parts: partMessagesFor(tag) };
  return [...new Set(removed.map((code) => labelOf(words, code) ?? code))];
}

const examined = (record: Examination, kind: LimbKind): boolean =>
  kind === 'leg' || Boolean(record.pulses?.radial ?? record.pulses?.brachial ?? record.pulses?.carotid);

/**
 * A lesson that shows a record. Its answer names no lesion: what was wrong, the record does not say.
 * @param texts in each language of the title
 */
export function lessonOfRecord(
  { examination }: Nameless,
  texts: Pick<LessonInput, 'title' | 'story'> & { readonly answer: LessonInput['answer']['text'] },
): LessonInput {
  const { title, story, answer } = texts;
  return {
    format: LESSON_FORMAT,
    id: 'record',
    title,
    story,
    real: true,
    limbs: LIMB_KINDS.filter((kind) => examined(examination, kind)),
    examination,
    answer: { lesions: [], text: answer },
  };
}
