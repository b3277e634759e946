import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PULSE_PLACES, type PulseSiteId, type Side, SIDES } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  type Grade,
  GRADES,
  setPulse,
} from '../../../src/examination/index.js';
import { settlingQuestion } from '../../../src/localisation/network/besides.js';
import { localise } from '../../../src/localisation/network/index.js';

type Felt = readonly (readonly [PulseSiteId, Side, Grade])[];

const felt = (pulses: Felt, from: Examination = emptyExamination()): Examination =>
  pulses.reduce((record, [site, side, grade]) => setPulse(record, { site, side } as never, { grade }), from);

const records = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...PULSE_PLACES), fc.constantFrom(...GRADES)), {
    minLength: 3,
    maxLength: 10,
    selector: ([place]) => `${place.side} ${place.site}`,
  })
  .map((pulses) =>
    pulses.reduce((record, [place, grade]) => setPulse(record, place, { grade }), emptyExamination()),
  );

function read(record: Examination, earlier?: Examination): ReturnType<typeof localise> & { status: 'read' } {
  const reading = localise(record, { ...(earlier && { earlier }) });
  if (reading.status !== 'read') throw new Error(reading.status);
  return reading;
}

describe('The story', () => {
  it('has a lesion for the first answer of every examined limb', () => {
    fc.assert(
      fc.property(records, (record) => {
        const reading = localise(record, { detail: 'posterior' });
        fc.pre(reading.status === 'read');
        const told = new Set<string>(reading.story.lesions.map(({ piece }) => piece));
        for (const { examined, first } of Object.values(reading.limbs)) {
          if (examined && first) expect(first.pieces.some((piece) => told.has(piece))).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('The story of a limb whose disease begins beyond what was examined', () => {
  it('has that lesion, too', () => {
    const record = felt([
      ['brachial', 'right', 'bounding'],
      ['axillary', 'left', 'reduced'],
      ['femoral', 'left', 'absent'],
      ['femoral', 'right', 'bounding'],
      ['radial', 'left', 'absent'],
      ['carotid', 'right', 'absent'],
      ['superficial-temporal', 'left', 'bounding'],
      ['ulnar', 'right', 'normal'],
    ]);
    const { limbs, story } = read(record);
    expect(limbs['right leg'].first?.artery).toBe('superficial-femoral');
    expect(story.lesions.map(({ piece }) => piece)).toContain('right superficial-femoral');
  });
});

describe('One foot pulse absent beside a felt one', () => {
  /** Arteries that may take one foot pulse alone. */
  const own = {
    'dorsalis-pedis': ['anterior-tibial', 'dorsalis-pedis'],
    'posterior-tibial': ['posterior-tibial', 'tibioperoneal-trunk'],
  };

  it.each(
    SIDES.flatMap((side) =>
      (['dorsalis-pedis', 'posterior-tibial'] as const).flatMap((site) =>
        ([undefined, 'chronic'] as const).map((onset) => [site, side, onset] as const),
      ),
    ),
  )('is its artery or a pulse that was never there: %s, %s, onset %s', (site, side, onset) => {
    const grades = (['femoral', 'popliteal', 'dorsalis-pedis', 'posterior-tibial'] as const).map(
      (one): Felt[number] => [one, side, one === site ? 'absent' : 'normal'],
    );
    const record = felt(grades, { ...emptyExamination(), ...(onset && { onset }) });
    const reading = read(record);
    const { occluded } = reading.limbs[`${side} leg`];
    // Common practice, no source: neither is to be told without the other.
    expect(occluded.open).toBeGreaterThan(0.3);
    expect(occluded.open).toBeLessThan(0.75);
    const [first, second] = occluded.entries;
    for (const entry of [first, second]) expect(own[site]).toContain(entry?.arteries[0]);
    expect(first!.probability + second!.probability).toBeGreaterThan(0.25);
    expect(reading.settle).toBe('from-birth');
    const known = { ...record, context: { absentFromBirth: { [side]: [site] } } } as Examination;
    expect(read(known).settle).toBeUndefined();
    expect(read(known).limbs[`${side} leg`].occluded.open).toBeGreaterThan(0.9);
  });
});

describe('The evidence', () => {
  it('never lets a weak pulse of the limb speak against a lesion on its way', () => {
    fc.assert(
      fc.property(records, (record) => {
        const reading = localise(record);
        fc.pre(reading.status === 'read');
        for (const [limb, detail] of Object.entries(reading.detail)) {
          const { first } = reading.limbs[limb as keyof typeof reading.limbs];
          for (const { finding, weight } of detail?.evidence ?? []) {
            if (finding.kind !== 'pulse' || !first) continue;
            const weak = finding.grade === 'absent' || finding.grade === 'reduced';
            const kind = limb.endsWith('leg')
              ? /femoral|popliteal|tibial|pedis/
              : /axillary|brachial|radial|ulnar/;
            const own = limb.startsWith(finding.place.side) && kind.test(finding.place.site);
            if (weak && own) expect(weight).toBeGreaterThan(0);
          }
        }
      }),
      { numRuns: 12 },
    );
  });
});

describe('An earlier record', () => {
  const now = felt([
    ['femoral', 'left', 'normal'],
    ['popliteal', 'left', 'absent'],
    ['posterior-tibial', 'left', 'absent'],
  ]);

  it('dates the event by a pulse that was felt then, and not by one that was gone already', () => {
    const before = read(now).acute;
    expect(read(now, felt([['popliteal', 'left', 'normal']])).acute).toBeGreaterThan(before);
    expect(read(now, felt([['popliteal', 'left', 'absent']])).acute).toBeLessThan(before);
  });

  it('supports what has not changed', () => {
    const shut = (earlier?: Examination): number =>
      1 - read({ ...now, onset: 'chronic' }, earlier).limbs['left leg'].occluded.open;
    expect(shut(felt([['posterior-tibial', 'left', 'absent']]))).toBeGreaterThanOrEqual(shut());
  });
});

describe('The question that settles absent pulses without arterial disease', () => {
  it.each<[string, Examination, ReturnType<typeof settlingQuestion>]>([
    ['nothing weak', felt([['radial', 'left', 'normal']]), undefined],
    ['a wrist', felt([['radial', 'left', 'absent']]), 'access'],
    [
      'an arm weak from the brachial on',
      felt([
        ['brachial', 'left', 'absent'],
        ['radial', 'left', 'absent'],
      ]),
      undefined,
    ],
    [
      'three limbs',
      felt([
        ['radial', 'left', 'absent'],
        ['popliteal', 'left', 'absent'],
        ['popliteal', 'right', 'reduced'],
      ]),
      'circulation',
    ],
    ['an acute leg', { ...felt([['popliteal', 'left', 'absent']]), onset: 'acute' }, 'swelling'],
    ['a chronic leg', { ...felt([['popliteal', 'left', 'absent']]), onset: 'chronic' }, undefined],
    [
      'one foot artery beside a felt twin',
      felt([
        ['dorsalis-pedis', 'left', 'absent'],
        ['posterior-tibial', 'left', 'normal'],
      ]),
      'from-birth',
    ],
    ['one foot artery whose twin was not felt for', felt([['dorsalis-pedis', 'left', 'absent']]), undefined],
  ])('after %s', (_, record, question) => {
    expect(settlingQuestion(record)).toBe(question);
  });
});

describe('What a reading says', () => {
  it('does not depend on readings made since, though it is worked out when asked for', () => {
    fc.assert(
      fc.property(records, records, (record, other) => {
        const told = structuredClone(read(record));
        const reading = read(record);
        read(other);
        expect(structuredClone(reading)).toEqual(told);
      }),
      { numRuns: 25 },
    );
  });

  it('is the same of every limb, whether all of it was asked for or the posterior alone', () => {
    fc.assert(
      fc.property(records, (record) => {
        const posterior = localise(record, { detail: 'posterior' });
        if (posterior.status !== 'read') throw new Error(posterior.status);
        expect(structuredClone(read(record).limbs)).toEqual(structuredClone(posterior.limbs));
      }),
      { numRuns: 25 },
    );
  });
});
