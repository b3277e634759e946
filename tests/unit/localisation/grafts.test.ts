import { describe, expect, it } from 'vitest';
import { ARTERY_IDS, LATERALITIES, piecesOf } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  GRAFT_PULSES,
  type RevascularisedArtery,
} from '../../../src/examination/index.js';
import { localise } from '../../../src/localisation/network/index.js';
import { examined } from '../../tools/examinations.js';

const ROUTES = ['axillo-femoral', 'cross-over'] as const;
const graft = (more: Partial<RevascularisedArtery> = {}): Pick<Examination, 'context'> => ({
  context: {
    revascularisations: [{ artery: 'external-iliac', side: 'left', kind: 'bypass', ...more }],
  },
});

function read(examination: Examination) {
  const reading = localise(examination);
  if (reading.status !== 'read') throw new Error(reading.status);
  return reading;
}
/** Probability that the left leg loses its pulse at the groin, where the graft lands. */
const atLanding = (examination: Examination): number =>
  read(examination)
    .limbs['left leg'].occluded.entries.filter(({ arteries }) => arteries.includes('common-femoral'))
    .reduce((sum, { probability }) => sum + probability, 0);

const lost = examined({
  'right femoral': 'normal',
  'left femoral': 'absent',
  'left popliteal': 'absent',
  'left dorsalis-pedis': 'absent',
  'left posterior-tibial': 'absent',
});
const footOnly = examined({
  'right femoral': 'normal',
  'left femoral': 'normal',
  'left popliteal': 'absent',
  'left dorsalis-pedis': 'absent',
  'left posterior-tibial': 'absent',
});

/* A graft outside the course of its artery feeds the limb from where it lands. Common practice, no source. */
describe('a leg that a graft outside the anatomy feeds', () => {
  it.each(ROUTES)(
    'loses its groin pulse by the graft and not by the iliac arteries it passes by (%s)',
    (route) => {
      const reading = read({ ...lost, ...graft({ route }) });
      expect(atLanding({ ...lost, ...graft({ route }) })).toBeGreaterThan(0.8);
      expect(atLanding({ ...lost, ...graft() })).toBeLessThan(0.5);
      for (const key of ['left common-iliac', 'left external-iliac'] as const) {
        const { narrowed, blocked } = reading.pieces[key];
        expect(narrowed + blocked).toBeLessThan(1e-9);
      }
    },
  );

  it.each(ROUTES)(
    'has its own pulse as evidence: absent raises its occlusion, felt lowers it (%s)',
    (route) => {
      for (const examination of [
        lost,
        examined({ 'left femoral': 'reduced', 'left popliteal': 'reduced' }),
      ]) {
        const by = (pulse: Partial<RevascularisedArtery>) =>
          atLanding({ ...examination, ...graft({ route, ...pulse }) });
        expect(by({ graftPulse: 'absent' })).toBeGreaterThan(by({}));
        expect(by({ graftPulse: 'present' })).toBeLessThan(by({}));
      }
    },
  );

  it('with the graft felt, looks for the lesion beyond it', () => {
    const examination = { ...footOnly, ...graft({ route: 'axillo-femoral', graftPulse: 'present' }) };
    const [first] = read(examination).limbs['left leg'].occluded.entries;
    expect(first?.arteries).toEqual(['superficial-femoral']);
    expect(read(examination).detail['left leg']?.evidence.map(({ finding }) => finding.kind)).toContain(
      'pulse',
    );
  });

  it('keeps its own troubles: nothing is claimed of the other leg, whose arteries stay in question', () => {
    const { limbs, pieces } = read({ ...lost, ...graft({ route: 'axillo-femoral' }) });
    expect(limbs['right leg'].first).toBeUndefined();
    expect(pieces['right external-iliac'].blocked).toBeGreaterThan(0);
    expect(pieces['right external-iliac'].blocked).toBeLessThan(0.01);
  });

  it('weighs the pulse of a graft along its artery too', () => {
    const along = (pulse: RevascularisedArtery['graftPulse']) => {
      const { narrowed, blocked } = read({
        ...emptyExamination(),
        ...lost,
        ...graft({ ...(pulse && { graftPulse: pulse }) }),
      }).pieces['left external-iliac'];
      return narrowed + blocked;
    };
    expect(along('present')).toBeLessThan(along(undefined));
  });
});

describe('any graft that a record may name', () => {
  const named = ARTERY_IDS.flatMap((artery) =>
    LATERALITIES.flatMap((side) =>
      [undefined, ...ROUTES].flatMap((route) =>
        [undefined, ...GRAFT_PULSES].map((graftPulse): RevascularisedArtery => ({
          artery,
          side,
          kind: 'bypass',
          ...(route && { route }),
          ...(graftPulse && { graftPulse }),
        })),
      ),
    ),
  );
  const posterior = (examination: Examination) => {
    const reading = localise(examination, { detail: 'posterior' });
    if (reading.status !== 'read') throw new Error(reading.status);
    return reading.pieces;
  };

  it('is read, and one of an artery that the side does not have changes nothing', () => {
    const without = posterior(lost);
    let none = 0;
    for (const one of named) {
      const pieces = posterior({ ...lost, context: { revascularisations: [one] } });
      // A way round the iliac arteries lands in the groin, which each side has.
      if (piecesOf(one).length || (one.route && 'left right'.includes(one.side))) continue;
      none++;
      expect(pieces, JSON.stringify(one)).toEqual(without);
    }
    expect(none).toBeGreaterThan(100);
  });
});
