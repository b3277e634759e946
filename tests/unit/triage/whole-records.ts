import fc from 'fast-check';
import { emptyExamination, type Examination, fieldAt, patchAt } from '../../../src/examination/index.js';
import { OPEN_CHOICES, type TriageChoices } from '../../../src/triage/index.js';

/** Any of some values, or nothing. */
const one = <const T>(...values: readonly T[]) => fc.option(fc.constantFrom(...values), { nil: undefined });
const any = <const T>(...values: readonly T[]) => fc.option(fc.subarray([...values]), { nil: undefined });
const yes = one(true as const);
const sides = <T>(value: fc.Arbitrary<T>) =>
  fc.record({ left: fc.option(value, { nil: undefined }), right: fc.option(value, { nil: undefined }) });

const pulse = fc.record({
  grade: one('absent', 'reduced', 'normal', 'bounding'),
  doppler: one('triphasic', 'monophasic', 'absent'),
  expansile: one(true as const, undefined, undefined, undefined),
});
const limbHistory = fc.record({
  symptom: one('none', 'claudication', 'rest-pain', 'tissue-loss'),
  onset: one('sudden', 'gradual', 'unknown'),
  hours: one(3, 335, 336, 5000),
  suddenPain: yes,
  newComplaint: yes,
});
const limbInspection = fc.record({
  colour: one('normal', 'pale', 'blue', 'mottled', 'fixed-mottled'),
  temperature: one('warm', 'cool', 'cold'),
  refill: one(2, 6),
  venousDoppler: one('audible', 'inaudible'),
  sensation: one('normal', 'digits', 'beyond-digits', 'lost'),
  movement: one('normal', 'weak', 'paralysed'),
  muscle: one('normal', 'tender', 'tense', 'rigid'),
  oedema: one('none', 'pitting'),
  thrombosisSigns: any('whole-limb-swollen', 'tender-along-veins'),
  painOutOfProportion: one(true, false),
  deficitKnown: yes,
  probeToBone: one(true, false),
  ulcer: one('none', 'shallow', 'deep', 'extensive'),
  gangrene: one('none', 'dry', 'wet'),
  ulcerCause: one('arterial', 'venous', 'mixed', 'unknown'),
  systemic: any('temperature', 'heart-rate', 'breathing'),
  infection: any('swelling', 'warmth', 'pus'),
  deepInfection: one(true, false),
  stretchPain: one(true, false),
  injurySigns: any('pulsatile-bleeding', 'stable-haematoma', 'knee-dislocation'),
  digits: fc.record({ first: one('normal', 'blue'), second: one('ulcer', 'gangrene', undefined, undefined) }),
});

function compact(value: unknown): unknown {
  if (Array.isArray(value) || typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).flatMap(([key, field]: [string, unknown]) => {
    const kept = compact(field);
    return kept === undefined ? [] : [[key, kept]];
  });
  return entries.length ? Object.fromEntries(entries) : undefined;
}

/** Sparse records over everything the tables read. */
export const anyRecord: fc.Arbitrary<Examination> = fc
  .record({
    onset: one('acute', 'chronic', 'unknown', undefined, undefined),
    pulses: fc.record({
      femoral: sides(pulse),
      popliteal: sides(pulse),
      'dorsalis-pedis': sides(pulse),
      'posterior-tibial': sides(pulse),
      brachial: sides(pulse),
      radial: sides(pulse),
      ulnar: sides(pulse),
      carotid: sides(pulse),
      'abdominal-aorta': fc.record({ midline: fc.option(pulse, { nil: undefined }) }),
    }),
    history: fc.record({
      leg: sides(limbHistory),
      arm: sides(limbHistory),
      risks: any('known-aneurysm', 'connective-tissue-disease'),
      elsewhere: any('back-pain', 'sudden-chest-or-back-pain', 'passing-stroke', 'deficit-now'),
    }),
    inspection: fc.record({ leg: sides(limbInspection), arm: sides(limbInspection) }),
    pressures: fc.record({
      brachial: fc.record({ left: one(100, 150), right: one(100, 150) }),
      'posterior-tibial': sides(fc.constantFrom(0, 40, 80, 140)),
      toe: sides(fc.constantFrom(20, 45, 110)),
      volumeCurve: sides(fc.constantFrom('normal', 'rounded', 'flat')),
    }),
    context: fc.record({
      diabetes: one(true, false),
      injury: sides(fc.constantFrom('groin', 'knee', 'elbow')),
      mechanism: one('dissection', 'embolic'),
      revascularisations: fc.option(
        fc.constantFrom([{ artery: 'superficial-femoral', side: 'left', kind: 'bypass' }] as const),
        { nil: undefined },
      ),
      access: fc.option(fc.constantFrom([{ side: 'left', kind: 'fistula' }] as const), { nil: undefined }),
      devices: fc.option(fc.constantFrom([{ limb: 'arm', side: 'right', kind: 'arterial-line' }] as const), {
        nil: undefined,
      }),
      aneurysms: fc.option(fc.constantFrom([{ place: 'popliteal', side: 'left' }] as const), {
        nil: undefined,
      }),
    }),
  })
  .map((parts) => ({ ...emptyExamination(), ...(compact(parts) as object) }) as unknown as Examination);

/** Some of the choices that the sources leave open, each by default or otherwise. */
export const anyChoices: fc.Arbitrary<TriageChoices> = fc
  .tuple(...OPEN_CHOICES.map(({ otherwise }) => one(...otherwise)))
  .map((values) =>
    values.reduce<object>((choices, value, i) => {
      const path = OPEN_CHOICES[i]?.setting.split('.') ?? [];
      return value === undefined ? choices : (patchAt(choices, path, value) ?? choices);
    }, {}),
  );

/** Fields of a limb's part from best to worst; nothing recorded is worsened by any of the bad ones. */
const SCALES: readonly (readonly [
  part: string,
  field: string,
  levels: readonly unknown[],
  firstBad: number,
])[] = [
  ['inspection', 'colour', ['normal', 'pale', 'blue', 'mottled', 'fixed-mottled'], 1],
  ['inspection', 'temperature', ['warm', 'cool', 'cold'], 1],
  ['inspection', 'venousDoppler', ['audible', 'inaudible'], 1],
  ['inspection', 'refill', [2, 6], 1],
  ['inspection', 'sensation', ['normal', 'digits', 'beyond-digits', 'lost'], 1],
  ['inspection', 'movement', ['normal', 'weak', 'paralysed'], 1],
  ['inspection', 'muscle', ['normal', 'tender', 'tense', 'rigid'], 1],
  ['inspection', 'stretchPain', [false, true], 1],
  ['inspection', 'painOutOfProportion', [false, true], 1],
  ['inspection', 'probeToBone', [false, true], 1],
  ['inspection', 'ulcer', ['none', 'shallow', 'deep', 'extensive'], 1],
  ['inspection', 'gangrene', ['none', 'dry', 'wet'], 1],
  ['history', 'symptom', ['none', 'claudication', 'rest-pain'], 2],
  ['history', 'suddenPain', [undefined, true], 1],
  ['history', 'newComplaint', [undefined, true], 1],
];

/** A part of a record with one field more. */
function withField(record: Examination, part: string, path: readonly string[], field: unknown): Examination {
  const parts = record as unknown as Record<string, object | undefined>;
  return { ...parts, [part]: patchAt(parts[part], path, field) } as unknown as Examination;
}

/** Every way in which one ischaemic sign of a record may be added or become worse. */
export function worsenings(
  record: Examination,
): { readonly name: string; readonly record: () => Examination }[] {
  const all = record as unknown as Record<string, unknown>;
  const limbs = (['leg', 'arm'] as const).flatMap((kind) =>
    (['left', 'right'] as const).map((side) => [kind, side] as const),
  );
  const ofFields = limbs.flatMap(([kind, side]) =>
    SCALES.flatMap(([part, field, levels, firstBad]) => {
      const now = fieldAt(all[part], [kind, side, field]);
      const from = now === undefined ? firstBad : levels.indexOf(now) + 1;
      // What a wound tells is told by the wound.
      if (now === 'tissue-loss') return [];
      return levels.slice(from).map((level) => ({
        name: `${side} ${kind} ${field} ${String(now)} to ${String(level)}`,
        record: () => withField(record, part, [kind, side, field], level),
      }));
    }),
  );
  const ofDigits = limbs.flatMap(([kind, side]) =>
    (['ulcer', 'gangrene'] as const).flatMap((state) => {
      const path = [kind, side, 'digits', 'third'];
      return [
        {
          name: `${side} ${kind} digit: ${state}`,
          record: () => withField(record, 'inspection', path, state),
        },
      ];
    }),
  );
  const sites = ['femoral', 'popliteal', 'dorsalis-pedis', 'posterior-tibial', 'brachial', 'radial', 'ulnar'];
  const ofPulses = sites.flatMap((site) =>
    (['left', 'right'] as const).flatMap((side) => {
      const found = (fieldAt(record.pulses, [site, side]) ?? {}) as Record<string, unknown>;
      if (found['grade'] === 'absent' && found['doppler'] !== undefined) return [];
      // An aneurysm that is felt cannot be lost by a finger that feels nothing.
      if (found['expansile'] ?? found['grade'] === 'bounding') return [];
      return [
        {
          name: `${side} ${site} ${JSON.stringify(found)} to absent`,
          record: () =>
            withField(record, 'pulses', [site, side], {
              grade: 'absent',
              ...(found['doppler'] === 'absent' && { doppler: 'absent' }),
            }),
        },
      ];
    }),
  );
  const told = record.history as { elsewhere?: readonly string[] } | undefined;
  const elsewhere = ['back-pain', 'deficit-now']
    .filter((symptom) => !told?.elsewhere?.includes(symptom))
    .map((symptom) => ({
      name: `${symptom} told`,
      record: () => withField(record, 'history', ['elsewhere'], [...(told?.elsewhere ?? []), symptom]),
    }));
  return [...ofFields, ...ofDigits, ...ofPulses, ...elsewhere];
}

const FLIP: Readonly<Record<string, string>> = { left: 'right', right: 'left' };

/** The same record seen in a mirror: every side is the other. */
export function mirrored<T>(value: T): T {
  if (Array.isArray(value)) return value.map((item) => mirrored<unknown>(item)) as T;
  if (typeof value === 'string') return (FLIP[value] ?? value) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, field]) => [FLIP[key] ?? key, mirrored<unknown>(field)]),
  ) as T;
}
