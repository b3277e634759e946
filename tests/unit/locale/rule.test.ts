import { describe, expect, it } from 'vitest';
import { LIMBS, limbKey, PULSE_PLACES } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Grade,
  type PulseFinding,
  restNormal,
} from '../../../src/examination/index.js';
import { en } from '../../../src/locale/en/index.js';
import { readByRule } from '../../../src/localisation/rule.js';
import { lesionReasons, limbLead, ruleLeads, silenceAt } from '../../../src/statements/index.js';
import { examined, FOOT, graded, outwardFrom } from '../../tools/examinations.js';

type Findings = Record<string, Grade | PulseFinding>;

interface Said {
  readonly leads: readonly string[];
  readonly reasons: readonly string[];
  readonly checks: readonly string[];
}

function said(findings: Findings, others: 'normal' | 'blank' = 'blank'): Said {
  const given = examined(findings);
  const examination = others === 'normal' ? restNormal(given) : given;
  const reading = readByRule(examination);
  const limbs = LIMBS.map((limb) => reading[limbKey(limb)]);
  return {
    leads: ruleLeads(reading).map(en.rule.lead),
    reasons: limbs.flatMap((limb) =>
      limb.lesions.map((lesion) => en.rule.reason(lesionReasons(examination, lesion))),
    ),
    checks: limbs.flatMap((limb) => limb.contradictions.map(en.rule.contradiction)),
  };
}

const beyond = (side: string, sites: readonly string[], grade: Grade): Findings =>
  Object.fromEntries(sites.map((site) => [`${side} ${site}`, grade]));
const ALL_FOOT = (side: string): string => `${FOOT.length === 2 ? 'both' : 'all'} ${side} pedal pulses`;

describe('the bedside rule in English', () => {
  it('tells a left superficial femoral block', () => {
    expect(said(beyond('left', ['popliteal', ...FOOT], 'absent'), 'normal')).toEqual({
      leads: ['Occlusion between left femoral and left popliteal'],
      reasons: [
        'Left femoral palpable, left popliteal absent. In between: left common femoral, left superficial femoral and left above-knee popliteal.',
      ],
      checks: [],
    });
  });

  it('tells an iliac block, with the other femoral as its witness', () => {
    expect(said(beyond('left', ['femoral', 'popliteal', ...FOOT], 'absent'), 'normal')).toEqual({
      leads: ['Occlusion between the abdominal aorta and left femoral'],
      reasons: [
        'Abdominal aorta palpable, right femoral palpable, left femoral absent. In between: left common iliac, left external iliac and left common femoral.',
      ],
      checks: [],
    });
  });

  it('tells both femorals gone once, at the fork or one on each side', () => {
    const { leads } = said({
      'midline abdominal-aorta': 'normal',
      'right femoral': 'absent',
      'left femoral': 'absent',
    });
    expect(leads).toEqual([
      'Occlusion above both femoral pulses: at the aortic bifurcation, or one on each side',
    ]);
  });

  it('says how far up the aorta the block may lie when the aorta was not felt', () => {
    const femorals: Findings = { 'right femoral': 'absent', 'left femoral': 'absent' };
    expect(said(femorals)).toEqual({
      leads: ['Occlusion above both femoral pulses: in the aorta, or one on each side'],
      reasons: ['right', 'left'].map(
        (side) =>
          `${side === 'right' ? 'Right' : 'Left'} femoral absent. No proximal pulse palpable: the segment runs from the heart to ${side} femoral. Abdominal aorta not examined, so the segment cannot be narrowed further.`,
      ),
      checks: [],
    });
    expect(said({ ...femorals, 'left radial': 'normal' }).leads).toEqual([
      'Occlusion above both femoral pulses: in the aorta beyond the arch, or one on each side',
    ]);
  });

  it('never speaks of a femoral pulse that nobody felt for', () => {
    const { leads } = said({
      'midline abdominal-aorta': 'normal',
      'right femoral': 'absent',
      'left popliteal': 'absent',
    });
    expect(leads).toEqual([
      'Occlusion above right femoral and left popliteal: at the aortic bifurcation, or one above each',
    ]);
  });

  it('names every limb that one lesion would explain', () => {
    const reading = readByRule(
      examined({ 'right femoral': 'absent', 'left femoral': 'absent', 'right subclavian': 'absent' }),
    );
    expect(en.rule.lead(limbLead(reading['right arm']))).toBe(
      'Occlusion above right femoral, left femoral and right subclavian: at the ascending aorta or the aortic arch, or more than one',
    );
    expect(en.rule.lead(limbLead(reading['left leg']))).toBe(
      'Occlusion above both femoral pulses: in the aorta, or one on each side',
    );
  });

  it('tells both feet pulseless below a felt aorta', () => {
    const feet = { ...beyond('right', FOOT, 'absent'), ...beyond('left', FOOT, 'absent') };
    expect(said({ 'midline abdominal-aorta': 'normal', ...feet }).leads).toEqual([
      'Occlusion above the pedal pulses of both sides: at the aortic bifurcation, or one on each side',
    ]);
  });

  it('tells a block below the knee', () => {
    expect(said(beyond('right', FOOT, 'absent'), 'normal').leads).toEqual([
      `Occlusion between right popliteal and ${ALL_FOOT('right')}`,
    ]);
  });

  it('tells one foot or forearm artery alone, and who is born without it', () => {
    expect(said({ 'left dorsalis-pedis': 'absent' }, 'normal')).toEqual({
      leads: ['Occlusion of the left anterior tibial or left dorsalis pedis artery alone'],
      reasons: [
        'Left popliteal palpable, left posterior tibial palpable, left dorsalis pedis absent. Some healthy people have no dorsalis pedis pulse.',
      ],
      checks: [],
    });
    expect(said({ 'right radial': 'absent' }, 'normal')).toEqual({
      leads: ['Occlusion of the right radial artery alone'],
      reasons: ['Right brachial palpable, right ulnar palpable, right radial absent.'],
      checks: [],
    });
  });

  it('does not call an artery alone where the others of its foot are weak too', () => {
    expect(
      said({ ...beyond('left', FOOT, 'reduced'), 'left dorsalis-pedis': 'absent' }, 'normal').leads,
    ).toEqual([
      `Stenosis between left popliteal and ${ALL_FOOT('left')}, and an occlusion of the left anterior tibial or left dorsalis pedis artery`,
    ]);
  });

  it('tells a narrowing and then a block', () => {
    expect(
      said({ 'left femoral': 'reduced', ...beyond('left', ['popliteal', ...FOOT], 'absent') }, 'normal')
        .leads,
    ).toEqual([
      'Stenosis between the abdominal aorta and left femoral, and an occlusion between left femoral and left popliteal',
    ]);
  });

  it('tells the inflow of the right arm and neck together', () => {
    const right = ['right subclavian', 'right carotid'].flatMap(outwardFrom);
    expect(said(graded(right, 'reduced'), 'normal').leads).toEqual([
      'Stenosis above right subclavian and right carotid: at the brachiocephalic trunk, or one above each',
    ]);
  });

  it('tells a block of the left arm’s inflow, with the neck as witness', () => {
    expect(said(graded(outwardFrom('left subclavian'), 'absent'), 'normal')).toEqual({
      leads: ['Occlusion above left subclavian'],
      reasons: ['Left carotid palpable, left subclavian absent. In between: left subclavian.'],
      checks: [],
    });
  });

  it('names sites that were not or could not be examined', () => {
    const { reasons } = said({
      'left femoral': 'normal',
      'left popliteal': { couldNotExamine: 'dressing' },
      'left posterior-tibial': 'absent',
    });
    const silent = FOOT.filter((site) => site !== 'posterior-tibial').map((site) => en.anatomy.sites[site]);
    expect(reasons).toEqual([
      expect.stringMatching(
        /^Left femoral palpable, left posterior tibial absent. In between: left common femoral, left superficial femoral, left popliteal, left tibioperoneal trunk and left posterior tibial. Left popliteal not assessable \(dressing\)/,
      ),
    ]);
    for (const site of silent) expect(reasons[0]).toContain(`left ${site} not examined`);
    expect(reasons[0]).toMatch(
      /so the segment cannot be narrowed further. A few healthy people have no posterior tibial pulse.$/,
    );
  });

  it('doubts a block with full pulses beyond it, and asks to feel again', () => {
    expect(said({ 'left popliteal': 'absent' }, 'normal')).toMatchObject({
      leads: [
        'Doubtful occlusion between left femoral and left popliteal, since left posterior tibial is fully palpable distally',
      ],
      checks: [
        'Left posterior tibial pulse is stronger than left popliteal above it: one may have been misjudged, or collaterals reconstitute the distal pulse. Palpate both again.',
      ],
    });
  });

  it('tells a reason that two doubts have in common once, with the last of them', () => {
    const weak = { 'right femoral': 'reduced', 'right popliteal': 'absent' } as const;
    expect(said(weak, 'normal').leads).toEqual([
      'Doubtful stenosis between the abdominal aorta and right femoral, and a doubtful occlusion between right femoral and right popliteal, since right posterior tibial is fully palpable distally',
    ]);
  });

  it('keeps a block with weak pulses beyond it', () => {
    expect(said({ 'left popliteal': 'absent', ...beyond('left', FOOT, 'reduced') }, 'normal').leads).toEqual([
      'Occlusion between left femoral and left popliteal, with left posterior tibial weakly palpable distally',
    ]);
  });

  it('makes little of an aorta that cannot be felt', () => {
    const { leads, reasons } = said({ 'midline abdominal-aorta': 'absent' }, 'normal');
    expect(leads).toEqual([
      'Doubtful occlusion above the abdominal aorta, since right femoral is fully palpable distally',
    ]);
    expect(reasons[0]).toContain('An impalpable aorta excludes neither aneurysm nor aorto-iliac occlusion.');
  });

  it('puts the circulation before any block when no pulse is felt anywhere', () => {
    const wide = ['right carotid', 'left carotid', 'right femoral', 'left femoral'];
    const of = (grade: Grade) => said(Object.fromEntries(wide.map((key) => [key, grade]))).leads;
    expect(of('absent')).toEqual([
      'No pulse palpable at any examined site: assess the circulation first (shock, cardiac arrest), before localising an occlusion',
    ]);
    expect(of('reduced')).toEqual([
      'All palpable pulses reduced: consider low flow or vasoconstriction before multiple stenoses',
    ]);
  });

  it('tells a full normal examination, and claims no more of a partial one', () => {
    expect(said({}, 'normal').leads).toEqual([
      `All ${PULSE_PLACES.length} pulses palpable, none reduced: no occlusive lesion suggested. A palpable pulse does not exclude arterial disease`,
    ]);
    expect(
      said({ 'left femoral': 'normal', ...beyond('left', FOOT, 'normal'), 'right radial': 'bounding' }).leads,
    ).toEqual([
      `Left leg: palpable as far as ${ALL_FOOT('left')}; 2 sites without a grade`,
      'Right arm: palpable as far as right radial; 4 sites without a grade',
    ]);
    expect(said({ 'midline abdominal-aorta': 'normal' }).leads).toEqual([
      'Abdominal aorta palpable, nothing distal to it graded',
    ]);
    expect(
      said({
        ...beyond('left', ['femoral', 'popliteal', ...FOOT], 'normal'),
        'midline abdominal-aorta': 'normal',
      }).leads,
    ).toContain(
      'Left leg: all pulses palpable, none reduced. A palpable pulse does not exclude arterial disease',
    );
  });

  it('says nothing of an empty examination', () => {
    expect(said({})).toEqual({ leads: [], reasons: [], checks: [] });
    expect(ruleLeads(readByRule(emptyExamination()))).toEqual([]);
  });

  it('lists silent sites one by one', () => {
    const examination = examined({ 'left popliteal': { couldNotExamine: 'cast' } });
    const rule = readByRule(examination)['left leg'];
    expect(rule.unstated.map((place) => en.rule.silence(silenceAt(examination, place)))).toEqual([
      'abdominal aorta not examined',
      'left femoral not examined',
      'left popliteal not assessable (cast)',
      ...FOOT.map((site) => `left ${en.anatomy.sites[site]} not examined`),
    ]);
  });
});
