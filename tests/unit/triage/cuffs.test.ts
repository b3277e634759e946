import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import '../../../src/locale/de/register.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { cuffCautions, type TriageChoices } from '../../../src/triage/index.js';

const told = (parts: object, choices?: TriageChoices) =>
  cuffCautions({ ...emptyExamination(), ...parts } as unknown as Examination, choices).map(
    ({ limb, code, rule }) => `${limb.side} ${limb.kind} ${code} ${rule}`,
  );
const graft = {
  context: { revascularisations: [{ artery: 'superficial-femoral', side: 'left', kind: 'bypass' }] },
};
const leg = (inspection: object) => ({ inspection: { leg: { right: inspection } } });

/* Teaching and laboratory pages; who may cuff a graft: local rule. */
describe('what stands against a cuff', () => {
  it.each<[string, object, string[]]>([
    ['nothing recorded', {}, []],
    ['fistula', { context: { access: [{ side: 'left', kind: 'fistula' }] } }, ['left arm access no-cuff']],
    [
      'lymphoedema',
      { inspection: { arm: { left: { lymphoedema: 'present' } } } },
      ['left arm lymphoedema no-cuff'],
    ],
    ['nodes removed', leg({ lymphoedema: 'nodes-removed' }), ['right leg lymphoedema no-cuff']],
    ['no lymphoedema', leg({ lymphoedema: 'none' }), []],
    ['thrombosis', leg({ thrombosisSigns: ['calf-wider'] }), ['right leg thrombosis no-cuff']],
    ['signs looked for and not there', leg({ thrombosisSigns: [] }), []],
    ['graft', graft, ['left leg graft ask-first']],
    ['ulcer', leg({ ulcer: 'shallow' }), ['right leg wound elsewhere']],
    ['toe gangrene', leg({ digits: { second: 'gangrene' } }), ['right leg wound elsewhere']],
    ['no ulcer', leg({ ulcer: 'none', gangrene: 'none' }), []],
    ['infection', leg({ infection: ['redness', 'warmth'] }), ['right leg infection elsewhere']],
    ['great pain', leg({ painOutOfProportion: true }), ['right leg pain elsewhere']],
    ['acute', leg({ colour: 'pale', temperature: 'cold' }), ['right leg acute call-first']],
  ])('%s', (_title, parts, expected) => {
    expect(told(parts)).toEqual(expected);
  });

  it.each(['en', 'de'])('calls no limb ischaemic that may be so (%s)', (tag) => {
    const pale = { ...emptyExamination(), ...leg({ colour: 'pale', temperature: 'cold' }) } as Examination;
    for (const register of ['trade', 'plain'] as const) {
      const said = cuffCautions(pale).map(partMessagesFor(tag, register).pressures.cuff);
      expect(said).toEqual([expect.stringMatching(/, (possibly|perhaps|möglicherweise|vielleicht) /)]);
    }
  });

  it('a graft by the rule of the house', () => {
    expect(told(graft, { graftCuff: 'no-cuff' })).toEqual(['left leg graft no-cuff']);
    expect(told(graft, { graftCuff: 'allowed' })).toEqual([]);
  });
});
