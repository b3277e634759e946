import { describe, expect, it } from 'vitest';
import {
  type Level,
  limbKey,
  LIMBS,
  type LimbKind,
  pieceAbove,
  piecesTo,
  type Place,
  placeKey,
  PULSE_PLACES,
  type PulseSiteId,
  SIDES,
} from '../../../src/anatomy/index.js';
import { restNormal } from '../../../src/examination/index.js';
import { type LimbRule, readByRule, type RuleLesion } from '../../../src/localisation/rule.js';

import { examined, FOOT, graded, outwardFrom, place, WRIST } from '../../tools/examinations.js';

/** One row of the worked sequence: with this pulse lost, where the block lies. `S` stands for the side. */
interface Row {
  readonly kind: LimbKind;
  /** Pulses lost: the first station without a pulse and all beyond it. */
  readonly lost: readonly string[];
  readonly above?: string;
  readonly below: readonly string[];
  /** The pieces on the way to the pulses of today's table; another site at the same end opens or adds pieces. */
  readonly pieces: readonly string[];
  readonly levels: readonly Level[];
  readonly single?: true;
}

const outward = (site: string): string[] =>
  outwardFrom(`left ${site}`).map((key) => key.replace('left', 'S'));
const [HANDS, FEET] = [WRIST, FOOT].map((sites) => sites.map((site) => `S ${site}`)) as [string[], string[]];

/**
 * The block at every level of every limb while all other pulses are felt. The rule is common practice, no source; the arteries between two sites
 * follow the vessel table of HRA-VCCF (CC BY 4.0), cut at the sites.
 */
const ROWS: readonly Row[] = [
  {
    kind: 'leg',
    lost: outward('femoral'),
    above: 'midline abdominal-aorta',
    below: ['S femoral'],
    pieces: ['S common-iliac', 'S external-iliac', 'S common-femoral proximal'],
    levels: ['aorto-iliac', 'femoro-popliteal'],
  },
  {
    kind: 'leg',
    lost: outward('popliteal'),
    above: 'S femoral',
    below: ['S popliteal'],
    pieces: ['S common-femoral distal', 'S superficial-femoral', 'S popliteal proximal'],
    levels: ['femoro-popliteal'],
  },
  {
    kind: 'leg',
    lost: FEET,
    above: 'S popliteal',
    below: FEET,
    pieces: [
      'S popliteal distal',
      'S tibioperoneal-trunk',
      'S posterior-tibial proximal',
      'S anterior-tibial',
      'S dorsalis-pedis proximal',
    ],
    levels: ['femoro-popliteal', 'infrapopliteal'],
  },
  {
    kind: 'leg',
    lost: ['S posterior-tibial'],
    above: 'S popliteal',
    below: ['S posterior-tibial'],
    pieces: ['S tibioperoneal-trunk', 'S posterior-tibial proximal'],
    levels: ['infrapopliteal'],
    single: true,
  },
  {
    kind: 'leg',
    lost: ['S dorsalis-pedis'],
    above: 'S popliteal',
    below: ['S dorsalis-pedis'],
    pieces: ['S anterior-tibial', 'S dorsalis-pedis proximal'],
    levels: ['infrapopliteal'],
    single: true,
  },
  {
    kind: 'arm',
    lost: outward('subclavian'),
    below: ['S subclavian'],
    pieces: ['S subclavian proximal'],
    levels: ['arm-inflow'],
  },
  {
    kind: 'arm',
    lost: outward('axillary'),
    above: 'S subclavian',
    below: ['S axillary'],
    pieces: ['S subclavian distal', 'S axillary proximal'],
    levels: ['arm-inflow', 'axillo-brachial'],
  },
  {
    kind: 'arm',
    lost: outward('brachial'),
    above: 'S axillary',
    below: ['S brachial'],
    pieces: ['S axillary distal', 'S brachial proximal'],
    levels: ['axillo-brachial'],
  },
  {
    kind: 'arm',
    lost: HANDS,
    above: 'S brachial',
    below: HANDS,
    pieces: ['S brachial distal', 'S radial proximal', 'S ulnar proximal'],
    levels: ['axillo-brachial', 'forearm-hand'],
  },
  {
    kind: 'arm',
    lost: ['S radial'],
    above: 'S brachial',
    below: ['S radial'],
    pieces: ['S radial proximal'],
    levels: ['forearm-hand'],
    single: true,
  },
  {
    kind: 'arm',
    lost: ['S ulnar'],
    above: 'S brachial',
    below: ['S ulnar'],
    pieces: ['S ulnar proximal'],
    levels: ['forearm-hand'],
    single: true,
  },
  {
    kind: 'head',
    lost: outward('carotid'),
    below: ['S carotid'],
    pieces: ['S common-carotid proximal'],
    levels: ['carotid'],
  },
  {
    kind: 'head',
    lost: ['S superficial-temporal'],
    above: 'S carotid',
    below: ['S superficial-temporal'],
    pieces: ['S common-carotid distal', 'S external-carotid', 'S superficial-temporal proximal'],
    levels: ['carotid'],
  },
];

/** The keys of the pieces through which a pulse place is fed. */
const wayTo = (key: string): string[] =>
  piecesTo(pieceAbove(place(key) as Place<PulseSiteId>)).map((piece) => piece.key);

function only(rule: LimbRule): RuleLesion {
  expect(rule.lesions.length).toBe(1);
  return rule.lesions[0] as RuleLesion;
}

const keys = (places: readonly Place[]): string[] => places.map(placeKey);

describe('the worked sequence', () => {
  for (const side of SIDES) {
    const of = (text: string) => text.replace('S ', `${side} `);
    for (const row of ROWS) {
      const lost = row.lost.map(of);
      for (const [grade, kind] of [
        ['absent', 'block'],
        ['reduced', 'narrowing'],
      ] as const) {
        it(`puts a ${kind} with ${lost.join(', ')} ${grade} between its bounds`, () => {
          const reading = readByRule(restNormal(examined(graded(lost, grade))));
          const rule = reading[`${side} ${row.kind}`];
          const found = only(rule);
          expect(rule.outcome).toBe('lesion');
          expect(found.kind).toBe(kind);
          expect(found.above && placeKey(found.above)).toBe(row.above && of(row.above));
          expect(keys(found.below)).toEqual(row.below.map(of));
          const open = PULSE_PLACES.map(placeKey)
            .filter((key) => !lost.includes(key))
            .flatMap(wayTo);
          const blamed = row.below.map(of).flatMap(wayTo);
          expect(found.pieces).toEqual([...new Set(blamed)].filter((piece) => !open.includes(piece)));
          expect(found.pieces).toEqual(
            expect.arrayContaining(row.pieces.map(of).filter((piece) => !open.includes(piece))),
          );
          expect(found.levels).toEqual(row.levels);
          expect(found.singleArtery).toBe(row.single);
          expect(found.unstated).toEqual([]);
          expect(found.sharedWith).toEqual([]);
          expect(rule.contradictions).toEqual([]);
          for (const limb of LIMBS.map(limbKey).filter((key) => key !== `${side} ${row.kind}`)) {
            expect(reading[limb].outcome, limb).toBe('normal');
          }
        });
      }
    }
  }

  it('puts a block above the aorta beyond the arch, for both legs, when the arms have pulses', () => {
    const reading = readByRule(
      restNormal(examined(graded(outwardFrom('midline abdominal-aorta'), 'absent'))),
    );
    for (const limb of ['right leg', 'left leg'] as const) {
      const found = only(reading[limb]);
      expect(keys(found.below)).toEqual(['midline abdominal-aorta']);
      expect(found.pieces).toEqual([
        'midline thoracic-aorta',
        'midline suprarenal-aorta',
        'midline infrarenal-aorta proximal',
      ]);
      expect(found.levels).toEqual(['central', 'aorto-iliac']);
    }
    expect(reading['right arm'].outcome).toBe('normal');
  });
});
