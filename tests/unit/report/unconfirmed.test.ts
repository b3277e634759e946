import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  formatExamination,
  parseExaminationText,
  recordDifferences,
  setPulse,
} from '../../../src/examination/index.js';
import { confirmed, unconfirmed } from '../../../src/report/index.js';
import { redFlags } from '../../../src/triage/index.js';
import { anyExamination } from '../../tools/arbitraries.js';
import { WHOLE_VISITS } from '../../tools/whole-visits.js';

const lasting: Examination = {
  ...emptyExamination(),
  examinedAt: '2026-05-01T10:00Z',
  examiner: 'Dr X',
  onset: 'acute',
  history: {
    leg: {
      left: {
        symptom: 'claudication',
        severity: 'severe',
        distance: 120,
        hours: 40,
        onset: 'sudden',
        suddenPain: true,
      },
    },
    risks: ['hypertension'],
    operations: 'appendix',
  },
  context: {
    smoking: 'current',
    diabetes: true,
    revascularisations: [
      { artery: 'superficial-femoral', side: 'left', kind: 'bypass', graftPulse: 'present' },
    ],
  },
  inspection: { leg: { left: { temperature: 'cold', colour: 'pale', sensation: 'digits' } } },
  pulses: { femoral: { right: { grade: 'normal' }, left: { grade: 'absent', note: 'felt twice' } } },
  bruits: { femoral: { right: { bruit: 'systolic' } } },
  pressures: { brachial: { right: 120 }, 'posterior-tibial': { left: 60 } },
  bedside: { elevation: { left: { pallor: true } } },
  staging: { leg: { left: { fontaine: { stage: 'IIb' } } } },
  calls: [{ team: 'vascular', at: '2026-05-01T10:05Z' }],
};
const anyRecord = fc.oneof(anyExamination, fc.constantFrom(...WHOLE_VISITS, lasting));
const scene = fc.tuple(anyRecord, anyRecord, fc.infiniteStream(fc.boolean())).map(([earlier, now, picks]) => {
  const open = unconfirmed(earlier, now);
  return { earlier, now, open, chosen: open.filter(() => picks.next().value) };
});

describe('what is not confirmed', () => {
  it('is offered as far as today says nothing of it, and is nothing of today', () => {
    const open = unconfirmed(lasting, emptyExamination());
    const paths = open.flatMap(({ from }) => from);
    expect(paths).toContain('pulses.femoral.left');
    expect(paths).toContain('inspection.leg.left.temperature');
    expect(paths).toContain('history.risks');
    expect(paths).toContain('context.diabetes');
    // What is measured, timed or of its day is taken anew.
    for (const path of paths)
      expect(path).not.toMatch(
        /pressures|bedside|staging|calls|distance|hours|onset|suddenPain|circulation|marks/i,
      );
    expect(unconfirmed(lasting, lasting)).toEqual([]);
    const felt = setPulse(
      emptyExamination(),
      { site: 'femoral', side: 'left' },
      { couldNotExamine: 'dressing' },
    );
    expect(unconfirmed(lasting, felt).flatMap(({ from }) => from)).not.toContain('pulses.femoral.left');
  });

  it('never reaches the record, its flags or what is saved until it is confirmed', () => {
    fc.assert(
      fc.property(scene, ({ earlier, now, open }) => {
        const [text, raised] = [formatExamination(now), JSON.stringify(redFlags(now))];
        expect(confirmed(earlier, now, [])).toBe(now);
        unconfirmed(earlier, now);
        expect(formatExamination(now)).toBe(text);
        expect(JSON.stringify(redFlags(now))).toBe(raised);
        for (const { from } of open)
          for (const path of from)
            expect(
              path
                .split('.')
                .reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], now),
            ).toBeUndefined();
      }),
      { numRuns: 40 },
    );
  });
});

describe('what is confirmed', () => {
  it('stands as it stood before, and nothing else has changed', () => {
    fc.assert(
      fc.property(scene, ({ earlier, now, chosen }) => {
        const next = confirmed(earlier, now, chosen);
        const allowed = new Set(chosen.flatMap(({ from }) => from));
        const value = (record: Examination, path: readonly (string | number)[]): unknown =>
          path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], record);
        for (const { path } of recordDifferences(now, next)) {
          if (path[0] === 'format' || path[0] === 'carried') continue;
          const steps = path.map((_, i) => path.slice(0, i + 1).join('.'));
          const under = [...allowed].filter(
            (one) => steps.includes(one) || one.startsWith(`${path.join('.')}.`),
          );
          expect(under.length, path.join('.')).toBeGreaterThan(0);
          for (const one of under)
            expect(value(next, one.split('.'))).toEqual(value(earlier, one.split('.')));
        }
        // What was confirmed is not offered again.
        const left = unconfirmed(earlier, next).map(({ key }) => key);
        const keys = chosen.map(({ key }) => key);
        expect(left.filter((key) => keys.includes(key))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('is a record that any reader takes, in whatever order', () => {
    fc.assert(
      fc.property(scene, ({ earlier, now, chosen }) => {
        const next = confirmed(earlier, now, chosen);
        const text = formatExamination(next);
        expect(parseExaminationText(text).ok).toBe(true);
        const other = confirmed(earlier, now, [...chosen].reverse());
        expect(JSON.parse(formatExamination(other))).toEqual(JSON.parse(text));
      }),
      { numRuns: 40 },
    );
  });

  it('together is all that the earlier visit found of its kind, and carries no date, name or state over', () => {
    const now = emptyExamination();
    const next = confirmed(lasting, now, unconfirmed(lasting, now));
    expect(unconfirmed(lasting, next)).toEqual([]);
    expect(next.pulses).toEqual(lasting.pulses);
    expect(next.inspection).toEqual(lasting.inspection);
    expect(next.history?.leg?.left).toEqual({ symptom: 'claudication', severity: 'severe' });
    for (const field of [
      'examinedAt',
      'examiner',
      'onset',
      'pressures',
      'bedside',
      'staging',
      'calls',
    ] as const)
      expect(next[field]).toBeUndefined();
    for (const side of SIDES) expect(next.pulses?.popliteal?.[side]).toBeUndefined();
  });
});
