import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limbKey, LIMBS, oppositeSide, PULSE_PLACES, type Side } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  parseExamination,
  pulseAt,
  restNormal,
} from '../../../src/examination/index.js';
import { messagesFor } from '../../../src/locale/index.js';
import { SOURCES } from '../../../src/localisation/index.js';
import { readByRule } from '../../../src/localisation/rule.js';
import {
  everywhereLead,
  type LeadStatement,
  lesionReasons,
  lesionStatements,
  limbLead,
  REMARKS,
  ruleLeads,
  type SilentStatement,
} from '../../../src/statements/index.js';
import { gradedExamination } from '../../tools/arbitraries.js';
import { examined, FOOT, graded, mirrored } from '../../tools/examinations.js';

const lesionsOf = (leads: readonly LeadStatement[]) =>
  leads.flatMap((lead) => (lead.code === 'lesions' ? lead.lesions : []));

/** Every text within a value. */
function texts(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(texts) : [];
}

describe('the statements of the rule, for any examination', () => {
  it('are plain data of ids and numbers, which survive JSON', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const reading = readByRule(examination);
        const all = Object.values(reading).flatMap((rule) => [
          limbLead(rule),
          ...rule.lesions.map((one) => lesionReasons(examination, one)),
        ]);
        const statements = [...ruleLeads(reading), ...all];
        expect(JSON.parse(JSON.stringify(statements))).toEqual(statements);
        // A limb key is the only id with a space in it.
        const ids = texts(statements).filter((text) => !LIMBS.some((limb) => limbKey(limb) === text));
        for (const id of ids) expect(id).toMatch(/^[a-z0-9-]+$/);
      }),
    );
  });

  it('tell every lesion of the reading, and none twice', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const reading = readByRule(examination);
        if (everywhereLead(reading)) return;
        const site = ({ kind, site: at }: { kind: string; site: { code: string } }) =>
          JSON.stringify([kind, at.code === 'artery' ? { ...at, alone: true } : at]);
        const told = lesionsOf(ruleLeads(reading)).map(site);
        const all = Object.values(reading).flatMap((rule) => lesionStatements(rule).map(site));
        expect(new Set(told).size).toBe(told.length);
        expect(new Set(told)).toEqual(new Set(all));
      }),
    );
  });

  it('say nothing where nothing is graded, and all felt only where every pulse is', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const leads = ruleLeads(readByRule(examination));
        const grades = PULSE_PLACES.map((place) => pulseAt(examination, place)?.grade);
        const full = grades.every((grade) => grade === 'normal' || grade === 'bounding');
        expect(leads.length === 0).toBe(grades.every((grade) => grade === undefined));
        expect(leads.some(({ code }) => code === 'all-felt')).toBe(full);
      }),
    );
  });

  it('name no site as felt for that was not, and none as silent that was', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        for (const one of Object.values(readByRule(examination)).flatMap(({ lesions }) => lesions)) {
          for (const reason of lesionReasons(examination, one)) {
            if (reason.code === 'felt') {
              for (const { place, grade } of reason.sites) {
                expect(grade).toBeDefined();
                expect(grade).toBe(pulseAt(examination, place)?.grade);
              }
            }
            if (reason.code === 'wide') {
              for (const { place, reason: why } of reason.sites as readonly SilentStatement[]) {
                expect(pulseAt(examination, place)?.grade).toBeUndefined();
                expect(why).toBe(pulseAt(examination, place)?.couldNotExamine);
              }
            }
          }
        }
      }),
    );
  });

  it('tell the reason for a doubt with the last lesion it applies to', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        for (const rule of Object.values(readByRule(examination))) {
          const statements = lesionStatements(rule);
          rule.lesions.forEach((one, i) => {
            const statement = statements[i];
            expect(statement?.doubtful).toBe(one.contradictedBy !== undefined && !one.refilled);
            const last = rule.lesions.findLast(
              (other) =>
                JSON.stringify([other.contradictedBy, other.refilled]) ===
                JSON.stringify([one.contradictedBy, one.refilled]),
            );
            if (one.contradictedBy && last === one) {
              expect(statement?.beyond?.place).toEqual(one.contradictedBy);
            }
          });
        }
      }),
    );
  });

  it('give the mirror image of a limb the same answer on the other side', () => {
    const turned = (value: unknown): unknown => {
      if (value === 'right' || value === 'left') return oppositeSide(value as Side);
      if (typeof value === 'string') {
        return value.replace(/^(right|left)(?= )/, (side) => oppositeSide(side as Side));
      }
      if (Array.isArray(value)) return value.map(turned);
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, turned(one)]));
    };
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const [own, other] = [readByRule(examination), readByRule(mirrored(examination))];
        for (const side of ['right', 'left'] as const) {
          const legs = [own[`${side} leg`], other[`${oppositeSide(side)} leg`]] as const;
          const [a, b] = legs.map(limbLead);
          // Shared sites are listed right before left in both.
          if (JSON.stringify(a).includes('above-each')) continue;
          expect(turned(a)).toEqual(b);
        }
      }),
    );
  });
});

describe('the remarks on a pulse that is not there', () => {
  it('each have a source', () => {
    for (const { source } of Object.values(REMARKS)) expect(SOURCES[source]).toBeTruthy();
  });

  it('are made where it is the only one not there, and not where it is weak or the whole foot is without pulse', () => {
    const remarks = (findings: Parameters<typeof examined>[0]) => {
      const examination = restNormal(examined(findings));
      const { lesions } = readByRule(examination)['left leg'];
      return lesions
        .flatMap((one) => lesionReasons(examination, one))
        .filter(({ code }) => code === 'may-be-missing');
    };
    expect(remarks({ 'left dorsalis-pedis': 'absent' })).toEqual([
      { code: 'may-be-missing', site: 'dorsalis-pedis' },
    ]);
    expect(remarks({ 'left dorsalis-pedis': 'reduced' })).toEqual([]);
    const foot = FOOT.map((site) => `left ${site}`);
    expect(remarks(graded(foot, 'absent'))).toEqual([]);
  });

  it('are none on an empty record', () => {
    expect(ruleLeads(readByRule(emptyExamination()))).toEqual([]);
  });
});

describe('a site that a later version recorded in words of its own', () => {
  it('is never said to be not examined', () => {
    const before = examined({ 'left femoral': 'normal', 'left posterior-tibial': 'absent' });
    const parsed = parseExamination({
      ...before,
      pulses: { ...before.pulses, popliteal: { left: { grade: 'thready' } } },
    });
    const examination = (parsed as { value: Examination }).value;
    const [lesion] = readByRule(examination)['left leg'].lesions;
    const reasons = lesionReasons(examination, lesion!);
    const wide = reasons.find(({ code }) => code === 'wide') as Extract<
      (typeof reasons)[0],
      { code: 'wide' }
    >;
    expect(wide.sites).toContainEqual({ place: { site: 'popliteal', side: 'left' }, locked: true });
    const said = messagesFor('en').rule.reason(reasons);
    expect(said).toContain('Left popliteal recorded in a way this version does not know');
    expect(said).not.toMatch(/popliteal not examined/);
  });
});
