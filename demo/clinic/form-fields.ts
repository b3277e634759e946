/** A choice: what is stored and what is shown. */
type Choice = readonly [value: string, label: string];

export interface Field {
  readonly name: string;
  readonly label: string;
  readonly kind: 'date' | 'text' | 'number' | 'lines' | 'select' | 'radio';
  readonly hint?: string;
  readonly required?: true;
  readonly choices?: readonly Choice[];
  readonly unit?: string;
}

const same = (...words: string[]): Choice[] => words.map((word) => [word, word] as const);

/** The clinic's own questions before the examination: short answers, then long ones. */
export const SHORT: readonly Field[] = [
  { name: 'date', label: 'Date', kind: 'date', required: true },
  { name: 'examiner', label: 'Examiner', kind: 'text', required: true },
  {
    name: 'reason',
    label: 'Reason for visit',
    kind: 'select',
    required: true,
    choices: same(
      'Pain on walking',
      'Pain at rest',
      'Wound or ulcer',
      'Suddenly cold or painful limb',
      'Arm pain or weakness at work',
      'Follow-up',
      'Other',
    ),
  },
  {
    name: 'walking',
    label: 'Maximum walking distance',
    kind: 'number',
    hint: 'Until pain stops the patient',
    unit: 'm',
  },
  {
    name: 'smoking',
    label: 'Smoking',
    kind: 'radio',
    choices: [
      ['never', 'Never'],
      ['former', 'Former'],
      ['current', 'Current'],
    ],
  },
];
export const LONG: readonly Field[] = [
  { name: 'story', label: 'History of presenting complaint', kind: 'lines' },
  { name: 'medicines', label: 'Medicines', kind: 'lines', hint: 'One a line' },
];

/** And after it. */
export const AFTER: readonly Field[] = [{ name: 'plan', label: 'Assessment and plan', kind: 'lines' }];

/** An answer as it is read. */
export function answer(field: Field, value: string | undefined): string {
  if (!value) return '';
  const shown = field.choices?.find(([stored]) => stored === value)?.[1] ?? value;
  return field.unit ? `${shown} ${field.unit}` : shown;
}
