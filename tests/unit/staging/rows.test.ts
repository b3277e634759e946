import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { stageArm, stageLeg } from '../../../src/staging/index.js';
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
  expect: { stages?: Stages; note?: string };
}

const ALL = rows as unknown as readonly Row[];
const ROWS = ALL.filter(({ expect: e }) => e.stages);
const NOTED = ALL.filter(({ expect: e }) => e.note);

describe('every row of the decision tables that names stages', () => {
  it('is one of 23', () => expect(ROWS).toHaveLength(23));

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

describe('every row of the decision tables that names a note on the acute class', () => {
  it('is one of 3', () => expect(NOTED).toHaveLength(3));

  it.each(NOTED.map((row) => [row.id, row.title, row] as const))('%s: %s', (_id, _title, row) => {
    const examination = { ...emptyExamination(), ...row.record } as unknown as Examination;
    const acute =
      row.expect.note === 'described-for-leg'
        ? stageArm(examination, 'right')
        : stageLeg(examination, 'left').acute;
    expect(acute.notes).toContain(row.expect.note);
  });
});
