import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compareReports } from '../../../.tools/api-report.mjs';

describe('compareReports', () => {
  it('tells a name that is gone, one that is new, and one of another type', () => {
    const before = ['a', 'b\tstring', 'c'];
    const now = ['b\tnumber', 'c', 'd'];
    expect(compareReports(before, now)).toEqual({ removed: ['a'], added: ['d'], changed: ['b\tnumber'] });
  });

  it('is silent where nothing differs', () => {
    expect(compareReports(['a\tx'], ['a\tx'])).toEqual({ removed: [], added: [], changed: [] });
  });
});

describe('the report of the last release', () => {
  const names = readFileSync(new URL('../../../api-report.txt', import.meta.url), 'utf8')
    .trim()
    .split('\n');

  it('knows entries, members of types, and what elements take and tell', () => {
    for (const name of [
      'pulse-map/core: setPulse',
      'pulse-map/angular: PulseMapValueAccessor',
      'Examination.pulses',
      'PulseMap.openPlace',
      '<pulse-map> event change\tRecordEvent',
      '<pulse-map> part figure',
      '<limb-examination> state invalid',
    ])
      expect(names).toContain(name);
  });

  it('holds nothing private', () => {
    expect(names.filter((name) => /#|\bprivate\b|Callback$/.test(name.split('\t')[0] ?? ''))).toEqual([]);
  });
});
