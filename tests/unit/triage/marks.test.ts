import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination, type Mark, setPulse } from '../../../src/examination/index.js';
import { triage } from '../../../src/triage/index.js';

/** A record with many marks, each of which counts how often its points are read. */
function marked(): { record: Examination; reads: () => number } {
  let reads = 0;
  const marks = Array.from({ length: 60 }, (_, i): Mark => {
    const points = [
      [690, 760 + i * 9],
      [712, 760 + i * 9],
      [700, 778 + i * 9],
    ] as const;
    return {
      id: `m${i}`,
      kind: 'ulcer',
      get points() {
        reads++;
        return points;
      },
    };
  });
  return { record: { ...emptyExamination(), marks }, reads: () => reads };
}

describe('marks on the skin', () => {
  it('are named once, however often a record with them is read', () => {
    const { record, reads } = marked();
    const asked = triage(record).questions.filter(({ code }) => code === 'marks-unrecorded');
    expect(asked).toEqual([{ code: 'marks-unrecorded', limb: { kind: 'leg', side: 'left' } }]);
    expect(reads()).toBeGreaterThan(0);
    const next = setPulse(record, { site: 'femoral', side: 'left' }, { grade: 'absent' });
    // An edit freezes what it returns, points included.
    const first = reads();
    triage(next);
    triage({ ...next, examinedAt: '2026-01-02T10:00:00Z' });
    expect(reads()).toBe(first);
  });

  it('are named anew when one of them is another', () => {
    const { record } = marked();
    const arm: Mark = {
      id: 'arm',
      kind: 'ulcer',
      points: [
        [925, 540],
        [940, 540],
        [932, 556],
      ],
    };
    triage(record);
    const asked = triage({ ...record, marks: [arm] }).questions;
    expect(asked.filter(({ code }) => code === 'marks-unrecorded')).toEqual([
      { code: 'marks-unrecorded', limb: { kind: 'arm', side: 'left' } },
    ]);
  });
});
