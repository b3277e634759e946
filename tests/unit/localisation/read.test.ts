import { describe, expect, it } from 'vitest';
import { emptyExamination, setPulse } from '../../../src/examination/index.js';
import { readExamination } from '../../../src/localisation/index.js';

describe('readExamination', () => {
  const examination = setPulse(emptyExamination(), { site: 'femoral', side: 'left' }, { grade: 'absent' });

  it('reads the same record once, however often it is asked', () => {
    const reading = readExamination(examination);
    readExamination(emptyExamination());
    expect(readExamination(examination)).toBe(reading);
  });

  it('lets go of readings after a while, since an undo history may hold a thousand records', () => {
    const reading = readExamination(examination);
    for (let i = 0; i < 40; i++) readExamination(emptyExamination());
    const again = readExamination(examination);
    expect(again).not.toBe(reading);
    expect(again).toEqual(reading);
  });
});
