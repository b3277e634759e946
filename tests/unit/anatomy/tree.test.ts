import { describe, expect, it } from 'vitest';
import {
  ARTERIES,
  ARTERY_IDS,
  type ArteryId,
  childVessels,
  feedingPiece,
  leavesAt,
  parentVessel,
  pathTo,
  piecesOf,
  type Side,
  SIDES,
  sidesOf,
  siteDefinition,
  vesselKey,
  VESSELS,
} from '../../../src/anatomy/index.js';

interface BranchFact {
  readonly artery: ArteryId;
  /** What the vessel table says this artery branches from, by its own name for it. */
  readonly from: string | { readonly right: string; readonly left: string };
}

/**
 * "BranchesFrom" as the table has it.
 * Source: HRA-VCCF Vessel.csv, commit ccc0ec1b8a8ea97fd79e88811932bf58e38936dc (CC BY 4.0). The sided rows of subclavian and common carotid
 * agree with UBERON: UBERON:0001534 and UBERON:0001531 (right) are branching_part_of UBERON:0001529 (brachiocephalic).
 */
const VESSEL_TABLE: readonly BranchFact[] = [
  { artery: 'ascending-aorta', from: 'aorta' },
  { artery: 'aortic-arch', from: 'ascending aorta' },
  { artery: 'brachiocephalic', from: 'aortic arch' },
  { artery: 'subclavian', from: { right: 'brachiocephalic artery', left: 'aortic arch' } },
  { artery: 'axillary', from: 'subclavian artery' },
  { artery: 'brachial', from: 'axillary artery' },
  { artery: 'radial', from: 'brachial artery' },
  { artery: 'ulnar', from: 'brachial artery' },
  { artery: 'superficial-palmar-arch', from: 'ulnar artery' },
  { artery: 'deep-palmar-arch', from: 'radial artery' },
  { artery: 'common-carotid', from: { right: 'brachiocephalic artery', left: 'aortic arch' } },
  { artery: 'internal-carotid', from: 'common carotid artery' },
  { artery: 'external-carotid', from: 'common carotid artery' },
  { artery: 'superficial-temporal', from: 'external carotid artery' },
  { artery: 'thoracic-aorta', from: 'descending aorta' },
  { artery: 'suprarenal-aorta', from: 'descending thoracic aorta' },
  { artery: 'renal', from: 'abdominal aorta' },
  { artery: 'common-iliac', from: 'abdominal aorta' },
  { artery: 'external-iliac', from: 'common iliac artery' },
  { artery: 'internal-iliac', from: 'common iliac artery' },
  { artery: 'common-femoral', from: 'external iliac artery' },
  { artery: 'superficial-femoral', from: 'common femoral artery' },
  { artery: 'deep-femoral', from: 'common femoral artery' },
  { artery: 'popliteal', from: 'superficial femoral artery' },
  { artery: 'tibioperoneal-trunk', from: 'popliteal artery' },
  { artery: 'anterior-tibial', from: 'popliteal artery' },
  { artery: 'posterior-tibial', from: 'tibial-peroneal trunk' },
  { artery: 'peroneal', from: 'tibial-peroneal trunk' },
  { artery: 'dorsalis-pedis', from: 'anterior tibial artery' },
  { artery: 'plantar-arch', from: 'lateral plantar artery' },
];

/**
 * Branches of the first part of the subclavian, before the scalenus anterior. Vertebral: first segment of the subclavian in the
 * ADAN56 network, 1.57 of 5.69 cm on the right and 4.94 of 9.05 cm on the left (Boileau E et al., Int J Numer Method Biomed Eng
 * 2015;31(10):e02732, doi:10.1002/cnm.2732). Internal thoracic: opposite to the thyrocervical trunk, beside the vertebral
 * (textbook anatomy, from memory).
 */
const OF_FIRST_PART: readonly { readonly artery: ArteryId; readonly share: Record<Side, number> }[] = [
  { artery: 'vertebral', share: { right: 1.5741 / (1.5741 + 4.1119), left: 4.9384 / (4.9384 + 4.1119) } },
  {
    artery: 'internal-thoracic',
    share: { right: 1.5741 / (1.5741 + 4.1119), left: 4.9384 / (4.9384 + 4.1119) },
  },
];

/**
 * Which arteries of this tree stand for the table's names. Two names are stations between that the tree leaves out: the descending aorta continues
 * the arch, the lateral plantar artery is an end branch of the posterior tibial (from memory, textbook anatomy). The tree cuts the
 * abdominal aorta at the renal arteries, which the upper part gives off.
 */
const STANDS_FOR: Readonly<Record<string, readonly (ArteryId | null)[]>> = {
  aorta: [null],
  'ascending aorta': ['ascending-aorta'],
  'aortic arch': ['aortic-arch'],
  'brachiocephalic artery': ['brachiocephalic'],
  'subclavian artery': ['subclavian'],
  'axillary artery': ['axillary'],
  'brachial artery': ['brachial'],
  'radial artery': ['radial'],
  'ulnar artery': ['ulnar'],
  'common carotid artery': ['common-carotid'],
  'external carotid artery': ['external-carotid'],
  'descending aorta': ['aortic-arch'],
  'descending thoracic aorta': ['thoracic-aorta'],
  'abdominal aorta': ['suprarenal-aorta', 'infrarenal-aorta'],
  'common iliac artery': ['common-iliac'],
  'external iliac artery': ['external-iliac'],
  'common femoral artery': ['common-femoral'],
  'superficial femoral artery': ['superficial-femoral'],
  'popliteal artery': ['popliteal'],
  'tibial-peroneal trunk': ['tibioperoneal-trunk'],
  'anterior tibial artery': ['anterior-tibial'],
  'lateral plantar artery': ['posterior-tibial'],
};

/**
 * Relations of artery to artery in UBERON that hold on both sides.
 * Source: UBERON edit file, commit 01df342049588a3b71ab12d9479e3713ff575c50, and circulatory subset of 2022-02-21,
 * commit 6072d071ee8aa6526623a5a4cc7c7605bb90bd29 (CC BY 3.0).
 */
const UBERON_RELATIONS: readonly {
  readonly artery: ArteryId;
  readonly of: ArteryId;
  readonly relation: string;
}[] = [
  { artery: 'brachiocephalic', of: 'aortic-arch', relation: 'channels_from' },
  { artery: 'internal-carotid', of: 'common-carotid', relation: 'branching_part_of' },
  { artery: 'external-carotid', of: 'common-carotid', relation: 'part_of' },
  { artery: 'external-iliac', of: 'common-iliac', relation: 'part_of' },
  { artery: 'internal-iliac', of: 'common-iliac', relation: 'part_of' },
  { artery: 'dorsalis-pedis', of: 'anterior-tibial', relation: 'connecting_branch_of' },
];

describe('the arterial tree against the ontologies', () => {
  it('has a row in a table of branches for every artery but the lower part of the abdominal aorta', () => {
    const rows = new Set<ArteryId>([
      ...VESSEL_TABLE.map((row) => row.artery),
      ...OF_FIRST_PART.map(({ artery }) => artery),
    ]);
    expect(ARTERY_IDS.filter((id) => !rows.has(id))).toEqual(['infrarenal-aorta']);
    expect(parentVessel({ artery: 'infrarenal-aorta', side: 'midline' })?.artery).toBe('suprarenal-aorta');
  });

  for (const { artery, from } of VESSEL_TABLE) {
    for (const side of sidesOf(ARTERIES[artery].occurs)) {
      const name = typeof from === 'string' ? from : from[side as 'right' | 'left'];
      it(`lets the ${side} ${artery} arise from the ${name}`, () => {
        expect(STANDS_FOR[name]).toContain(parentVessel({ artery, side })?.artery ?? null);
      });
    }
  }

  for (const { artery, of, relation } of UBERON_RELATIONS) {
    it(`agrees with UBERON that ${artery} is ${relation} ${of}`, () => {
      expect(ARTERY_IDS.includes(artery)).toBe(true);
      for (const side of sidesOf(ARTERIES[artery].occurs)) {
        expect(parentVessel({ artery, side })?.artery).toBe(of);
      }
    });
  }

  it('puts popliteal and deep femoral below the femoral artery, which UBERON does not divide', () => {
    // UBERON:0002250 and UBERON:0001355 are part_of UBERON:0002060 femoral artery; it has no class for its common and superficial parts.
    const femoral: ArteryId[] = ['common-femoral', 'superficial-femoral'];
    for (const side of SIDES) {
      expect(femoral).toContain(parentVessel({ artery: 'popliteal', side })?.artery);
      expect(femoral).toContain(parentVessel({ artery: 'deep-femoral', side })?.artery);
    }
  });

  it('lets the peroneal leave the trunk that it shares with the posterior tibial', () => {
    // UBERON has no class for the trunk and calls UBERON:0001540 connecting_branch_of the posterior tibial; FMA:66421 names the trunk
    // "Trunk of posterior tibial artery", so both say the same of the vessel.
    for (const side of SIDES) {
      const children = childVessels({ artery: 'tibioperoneal-trunk', side }).map((child) => child.artery);
      expect(children).toEqual(['posterior-tibial', 'peroneal']);
    }
  });

  it.each(OF_FIRST_PART)(
    'lets the $artery leave the subclavian in its first part, before its pulse site',
    ({ artery, share }) => {
      for (const side of SIDES) {
        const vessel = { artery, side };
        expect(parentVessel(vessel)).toEqual({ artery: 'subclavian', side });
        expect(leavesAt(vessel)).toBeCloseTo(share[side], 2);
        expect(leavesAt(vessel)).toBeLessThan(siteDefinition('subclavian').at);
        expect(feedingPiece(piecesOf(vessel)[0]!)?.key).toBe(`${side} subclavian proximal`);
      }
    },
  );

  it('completes the arches of hand and foot from the second artery', () => {
    // Source: HRA-VCCF, as above: deep palmar branch of ulnar, superficial palmar branch of radial; deep plantar artery (FMA:69513) of dorsalis pedis.
    expect(ARTERIES['deep-palmar-arch'].joinedBy).toBe('ulnar');
    expect(ARTERIES['superficial-palmar-arch'].joinedBy).toBe('radial');
    expect(ARTERIES['plantar-arch'].joinedBy).toBe('dorsalis-pedis');
    expect(ARTERY_IDS.filter((id) => ARTERIES[id].joinedBy).length).toBe(3);
  });
});

describe('the arterial tree as a tree', () => {
  it('has one root', () => {
    expect(VESSELS.filter((vessel) => !parentVessel(vessel)).map(vesselKey)).toEqual([
      'midline ascending-aorta',
    ]);
  });

  it('names every vessel once, and each parent before its children', () => {
    const keys = VESSELS.map(vesselKey);
    expect(new Set(keys).size).toBe(keys.length);
    for (const vessel of VESSELS) {
      const parent = parentVessel(vessel);
      if (parent) expect(keys.indexOf(vesselKey(parent))).toBeGreaterThanOrEqual(0);
      if (parent) expect(keys.indexOf(vesselKey(parent))).toBeLessThan(keys.indexOf(vesselKey(vessel)));
    }
  });

  it('has the brachiocephalic trunk on the right only', () => {
    expect(VESSELS.filter((vessel) => vessel.artery === 'brachiocephalic')).toEqual([
      { artery: 'brachiocephalic', side: 'right' },
    ]);
  });

  it('reaches the heart from everywhere, never by way of the other side', () => {
    for (const vessel of VESSELS) {
      const path = pathTo(vessel);
      expect(path[0]).toEqual({ artery: 'ascending-aorta', side: 'midline' });
      expect(path.at(-1)).toEqual(vessel);
      const sides = new Set(path.map((step) => step.side).filter((side) => side !== 'midline'));
      expect([...sides]).toEqual(vessel.side === 'midline' ? [] : [vessel.side]);
    }
  });

  it('gives the way to the left foot in full', () => {
    expect(pathTo({ artery: 'dorsalis-pedis', side: 'left' }).map(vesselKey)).toEqual([
      'midline ascending-aorta',
      'midline aortic-arch',
      'midline thoracic-aorta',
      'midline suprarenal-aorta',
      'midline infrarenal-aorta',
      'left common-iliac',
      'left external-iliac',
      'left common-femoral',
      'left superficial-femoral',
      'left popliteal',
      'left anterior-tibial',
      'left dorsalis-pedis',
    ]);
  });

  it('lists as children exactly those that name the vessel as their parent', () => {
    for (const vessel of VESSELS) {
      for (const child of childVessels(vessel)) expect(parentVessel(child)).toEqual(vessel);
    }
    expect(VESSELS.flatMap(childVessels).length).toBe(VESSELS.length - 1);
  });
});
