import { describe, expect, it } from 'vitest';
import { GRADES, parseExamination } from '../../../src/examination/index.js';
import { armStress, hyperabduction } from '../../../src/bedside/index.js';
import { examine, findingsOf, OUTLET_POSITIONS, simulate } from '../../../src/flow/index.js';

const STEPS = [0, 30, 50, 60, 70, 80, 90, 95, 97, 100];

describe('positions of the arm', () => {
  it('are not told of an arm without an outlet to press', () => {
    const { bedside } = examine({});
    for (const test of ['scalene', 'costoclavicular', 'hyperabduction', 'arm-stress'] as const)
      expect(bedside?.[test]).toBeUndefined();
  });

  it.each(OUTLET_POSITIONS)(
    '%s: more pressing never strengthens the pulse; a closed artery takes it',
    (position) => {
      for (const side of ['right', 'left'] as const) {
        const grades = STEPS.map((percent) => {
          const { outlet } = findingsOf(simulate({ outlet: { [side]: { [position]: percent } } }));
          expect(outlet[side].before).toBe('normal');
          expect(outlet[side === 'right' ? 'left' : 'right'].during).toEqual({});
          return GRADES.indexOf(outlet[side].during[position]!);
        });
        expect(grades).toEqual([...grades].sort((a, b) => b - a));
        expect(grades[0]).toBe(GRADES.indexOf('normal'));
        expect(grades.at(-1)).toBe(GRADES.indexOf('absent'));
      }
    },
  );

  it('the raised arm at work tires sooner, the more its artery is pressed', () => {
    const seconds = STEPS.map(
      (percent) =>
        findingsOf(simulate({ outlet: { left: { hyperabduction: percent } } })).outlet.left.stress!.seconds,
    );
    expect(seconds).toEqual([...seconds].sort((a, b) => b - a));
    expect(seconds[0]).toBe(180);
    expect(seconds.at(-1)).toBeLessThan(120);
  });

  it('an artery narrowed beforehand never gains by a position', () => {
    const lesions = [{ piece: 'left subclavian' as const, narrowing: 80 }];
    for (const percent of STEPS) {
      const { outlet } = findingsOf(simulate({ lesions, outlet: { left: { costoclavicular: percent } } }));
      const { before, during } = outlet.left;
      expect(GRADES.indexOf(during.costoclavicular!)).toBeLessThanOrEqual(GRADES.indexOf(before));
    }
  });

  it('makes results that the record takes and the bedside tests read', () => {
    const record = examine({ outlet: { right: { scalene: 60, hyperabduction: 100 } } });
    expect(parseExamination(record).ok).toBe(true);
    expect(record.bedside?.scalene?.right).toMatchObject({ toward: { before: 'normal' } });
    expect(hyperabduction.evaluate(record.bedside!.hyperabduction!.right!).code).toBe('pulse-lost');
    // Tired early and nothing else: the test was not completed (Plewa 1998).
    expect(armStress.evaluate(record.bedside!['arm-stress']!.right!).code).toBe('fatigue-only');
  });
});
