import { partOf } from '../anatomy/index.js';
import { figureRegions, type MarkKind, skinMarks } from '../examination/index.js';
import type { Case, Raised } from './flag.js';
import { given } from './ground.js';
import type { LimbState } from './limb.js';
import type { Question } from './questions.js';
import { elsewhereOf } from './record.js';

/** Signs of a stroke, present or past. Source: NICE NG128 (from memory). */
export function elsewhereFlags({ examination }: Case): Raised[] {
  const told = elsewhereOf(examination) ?? [];
  const passed = told.filter((symptom) => symptom === 'passing-stroke' || symptom === 'passing-blindness');
  return [
    ...given(told.includes('deficit-now'), {
      code: 'stroke-now',
      urgency: 'now',
      because: [{ code: 'elsewhere', symptoms: ['deficit-now'] }],
    } as const),
    ...given(passed.length, {
      code: 'tia',
      urgency: 'today',
      because: [{ code: 'elsewhere', symptoms: passed }],
    } as const),
  ];
}

/** Whether Inspection says anything of what a mark shows. */
const SAYS: Partial<Record<MarkKind, (state: LimbState) => boolean>> = {
  gangrene: ({ facts: { inspection: i } }) => i.gangrene !== undefined || i.digits !== undefined,
  ulcer: ({ facts: { inspection: i } }) => i.ulcer !== undefined || i.digits !== undefined,
  cold: ({ facts: { inspection: i } }) => i.temperature !== undefined,
  pallor: ({ facts: { inspection: i } }) => i.colour !== undefined,
  cyanosis: ({ facts: { inspection: i } }) => i.colour !== undefined,
};

/** Marks drawn on the skin that Inspection does not say: "record it in Inspection?". */
export function markQuestions({ examination, limbs }: Case): Question[] {
  return skinMarks(examination).flatMap((mark): Question[] => {
    const says = SAYS[mark.kind];
    if (!says) return [];
    // Where it lies on the figure: the limb is all that is asked for.
    const [name] = figureRegions(mark);
    const kind = name && partOf(name);
    if (!name || kind === 'trunk') return limbs.some(says) ? [] : [{ code: 'marks-unrecorded' }];
    const at = limbs.filter(({ limb }) => limb.kind === kind && limb.side === name.side);
    return at.filter((state) => !says(state)).map(({ limb }) => ({ code: 'marks-unrecorded', limb }));
  });
}
