import { describe, expect, it } from 'vitest';
import { AFTER, answer, LONG, SHORT } from '../../../demo/clinic/form-fields.js';
import { DraftKeeper } from '../../../demo/clinic/draft-keeper.js';
import { flagOf, PATHWAY } from '../../../demo/clinic/flag-line.js';
import { day, localDate, moment } from '../../../demo/clinic/format.js';
import { hashOf, type Route, routeOf } from '../../../demo/clinic/routes.js';
import { PATIENTS, VISITS } from '../../../demo/clinic/samples.js';
import { type Draft, draftKey, EXAMINATION_NAME, EXTENT_NAME } from '../../../demo/clinic/types.js';
import { parseExaminationText } from '../../../src/examination/index.js';
import { readByRule } from '../../../src/localisation/rule.js';
import { en } from '../../../src/locale/index.js';
import { readPathway } from '../../../src/triage/index.js';
import { ruleLeads } from '../../../src/statements/index.js';

const FIELDS = [...SHORT, ...LONG, ...AFTER];

describe('the invented patients', () => {
  it('are three, each with a visit, told apart by id and number', () => {
    expect(PATIENTS.length).toBe(3);
    expect(new Set(PATIENTS.map((p) => p.id)).size).toBe(3);
    expect(new Set(PATIENTS.map((p) => p.number)).size).toBe(3);
    expect(new Set(VISITS.map((v) => v.patientId))).toEqual(new Set(PATIENTS.map((p) => p.id)));
    expect(new Set(VISITS.map((v) => v.id)).size).toBe(VISITS.length);
  });

  it('show in the lists the red flag of the cold leg, and none of who has none', () => {
    const flags = Object.fromEntries(VISITS.map((visit) => [visit.id, flagOf(visit)]));
    expect(flags['okafor-1']?.heading).toMatch(/^Now: .*right leg$/);
    expect(flags['lindqvist-1']).toBeUndefined();
    const unread = { ...VISITS[0]!, fields: { [EXAMINATION_NAME]: '{"format":"other' } };
    expect(flagOf(unread)).toBeUndefined();
  });

  it('call an invented number by a pathway that says so', () => {
    expect(readPathway(PATHWAY)).toEqual({ pathway: PATHWAY, faults: [] });
    expect(JSON.stringify(PATHWAY)).toMatch(/invented number/);
  });

  for (const visit of VISITS) {
    it(`have a visit ${visit.id} whose record the library reads, examined on the day of the visit`, () => {
      const parsed = parseExaminationText(visit.fields[EXAMINATION_NAME] ?? '');
      expect(parsed).toMatchObject({ ok: true });
      expect(parsed.ok && parsed.value.examinedAt?.slice(0, 10)).toBe(visit.fields['date']);
    });

    it(`have a visit ${visit.id} whose answers the form has questions for`, () => {
      const names = [...FIELDS.map((field) => field.name), EXTENT_NAME, EXAMINATION_NAME];
      for (const name of Object.keys(visit.fields)) expect(names).toContain(name);
      for (const field of FIELDS) {
        if (field.required) expect(visit.fields[field.name]).toBeTruthy();
        const value = visit.fields[field.name];
        if (value && field.choices) expect(field.choices.map(([stored]) => stored)).toContain(value);
      }
    });
  }

  it('read as their stories say', () => {
    const leads = (id: string) => {
      const parsed = parseExaminationText(VISITS.find((v) => v.id === id)?.fields[EXAMINATION_NAME] ?? '');
      return parsed.ok ? ruleLeads(readByRule(parsed.value)).map(en.rule.lead) : [];
    };
    expect(leads('lindqvist-1')).toEqual(['Stenosis between left femoral and left popliteal']);
    expect(leads('lindqvist-2')).toEqual(['Occlusion between left femoral and left popliteal']);
    expect(leads('okafor-1')).toEqual(['Occlusion between right femoral and right popliteal']);
    expect(leads('caldeira-1')).toEqual(['Stenosis above left subclavian']);
  });
});

describe('addresses', () => {
  const routes: Route[] = [
    { page: 'patients' },
    { page: 'about' },
    { page: 'lecture' },
    { page: 'lecture', lessonId: 'aortoiliac' },
    { page: 'lecture', lessonId: 'aortoiliac', presenter: true },
    { page: 'lecture', lessonId: 'aortoiliac', handOut: true },
    { page: 'lecture-editor' },
    { page: 'practice' },
    { page: 'practice', code: 'hard-12' },
    { page: 'practice', code: '4817', examiner: true },
    { page: 'patient', patientId: 'a' },
    { page: 'edit', patientId: 'a' },
    { page: 'visit', patientId: 'a', visitId: '7' },
    { page: 'edit', patientId: 'a', visitId: '7' },
    { page: 'patient', patientId: 'a/b ü%' },
  ];
  for (const route of routes) {
    it(`lead back to the page ${JSON.stringify(route)}`, () => {
      expect(routeOf(hashOf(route))).toEqual(route);
    });
  }

  it('are the list of patients when empty', () => {
    for (const hash of ['', '#', '#/', '#/patients', '#/patients/'])
      expect(routeOf(hash)).toEqual({ page: 'patients' });
  });

  it('are unknown when they lead nowhere', () => {
    for (const hash of [
      '#/x',
      '#/about/x',
      '#/lecture/a/x',
      '#/lecture/a/presenter/x',
      '#/patients/a/x',
      '#/patients/a/visits',
      '#/patients/a/visits/new/edit',
      '#/patients/a/visits/7/x',
      '#/patients/a/visits/7/edit/x',
    ]) {
      expect(routeOf(hash)).toEqual({ page: 'unknown' });
    }
    expect(routeOf('#/patients/%E0%A4')).toEqual({ page: 'patient', patientId: '%E0%A4' });
  });
});

describe('words for dates and answers', () => {
  it('write a day out, and leave what is none', () => {
    expect(day('2026-03-05')).toBe('5 March 2026');
    expect(day('soon')).toBe('soon');
    expect(day('')).toBe('no date');
    expect(day(undefined)).toBe('no date');
  });

  it('tell a moment in the reader’s own time', () => {
    const now = new Date(2026, 2, 5, 14, 5);
    expect(localDate(now)).toBe('2026-03-05');
    expect(moment(now.toISOString())).toBe('5 March 2026, 14:05');
    expect(moment('nonsense')).toBe('nonsense');
  });

  it('show an answer by its label and unit', () => {
    const field = (name: string) => FIELDS.find((f) => f.name === name) ?? FIELDS[0]!;
    expect(answer(field('smoking'), 'former')).toBe('Former');
    expect(answer(field('walking'), '180')).toBe('180 m');
    expect(answer(field('walking'), '')).toBe('');
    expect(answer(field('reason'), 'An older choice')).toBe('An older choice');
  });
});

describe('DraftKeeper', () => {
  const draft = (text: string): Draft => ({
    key: draftKey('a'),
    patientId: 'a',
    fields: { text },
    keptAt: text,
  });

  it('asks for each write at once, without waiting for the one before', async () => {
    const asked: string[] = [];
    const never = new Promise<void>(() => undefined);
    const store = { saveDraft: ({ keptAt }: Draft) => (asked.push(keptAt), never) };
    const keeper = new DraftKeeper(store, () => undefined);
    for (const text of ['1', '2', '3']) keeper.keep(draft(text));
    expect(asked).toEqual(['1', '2', '3']);
  });

  it('asks for nothing once closed, and closes after the last write', async () => {
    const asked: string[] = [];
    let done: () => void = () => undefined;
    const store = {
      saveDraft: ({ keptAt }: Draft) => (
        asked.push(keptAt),
        new Promise<void>((written) => (done = written))
      ),
    };
    const told: unknown[] = [];
    const keeper = new DraftKeeper(store, (outcome) => told.push(outcome));
    keeper.keep(draft('1'));
    const closed = keeper.close();
    keeper.keep(draft('2'));
    expect(told).toEqual([]);
    done();
    await closed;
    expect(asked).toEqual(['1']);
    expect(told).toEqual([{ keptAt: '1' }]);
  });

  it('tells a failed write and goes on with the next', async () => {
    const told: unknown[] = [];
    let full = true;
    const keeper = new DraftKeeper(
      { saveDraft: () => (full ? Promise.reject(new Error('disk full')) : Promise.resolve()) },
      (outcome) => told.push(outcome),
    );
    keeper.keep(draft('1'));
    await expect.poll(() => told.length).toBe(1);
    full = false;
    keeper.keep(draft('2'));
    await expect.poll(() => told.length).toBe(2);
    expect(told).toEqual([{ error: new Error('disk full') }, { keptAt: '2' }]);
  });
});

describe('draftKey', () => {
  it('tells a new visit of each patient and each amendment apart', () => {
    const keys = [draftKey('a'), draftKey('b'), draftKey('a', '1'), draftKey('a', '2')];
    expect(new Set(keys).size).toBe(4);
  });
});
