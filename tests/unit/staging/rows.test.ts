import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { stageLeg } from '../../../src/staging/index.js';
import rows from '../triage/rows.json' with { type: 'json' };

interface Stages {
  fontaine?: string[];
  notFontaine?: string[];
  rutherford?: number[];
  wound?: number[];
  ischaemia?: number[];
  infection?: number[];
}
interface Row {
  id: string;
  title: string;
  record: object;
  expect: { stages?: Stages };
}

const ROWS = (rows as unknown as readonly Row[]).filter(({ expect: e }) => e.stages);

describe('every row of the decision tables that names stages', () => {
  it.each(ROWS.map((row) => [row.id, row.title, row] as const))('%s: %s', (_id, _title, row) => {
    const examination = { ...emptyExamination(), ...row.record } as unknown as Examination;
    const side = JSON.stringify(row.record).includes('"right":{') ? 'right' : 'left';
    const { fontaine, rutherford, wifi } = stageLeg(examination, side);
    const { stages = {} } = row.expect;
    if (stages.fontaine) expect(fontaine.candidates).toEqual(stages.fontaine);
    for (const stage of stages.notFontaine ?? []) expect(fontaine.candidates).not.toContain(stage);
    if (stages.rutherford) expect(rutherford.candidates).toEqual(stages.rutherford);
    if (stages.wound) expect(wifi.wound.candidates).toEqual(stages.wound);
    if (stages.ischaemia) expect(wifi.ischaemia.candidates).toEqual(stages.ischaemia);
    if (stages.infection) expect(wifi.infection.candidates).toEqual(stages.infection);
  });
});
