import { describe, expect, it } from 'vitest';
import { ARTERY_CODES, ARTERY_IDS, arteryCodings, CODE_SYSTEMS } from '../../../src/anatomy/index.js';
import { isLoincCode, isSnomedId } from '../../tools/check-digits.js';

/** SNOMED CT numbers of the arteries that UBERON cross-references: believed to be "Entire ..." concepts, not for findings. */
const ENTIRE = [
  '181299009',
  '181300001',
  '244244002',
  '265790007',
  '181321001',
  '181322008',
  '181332001',
  '181333006',
  '362051006',
  '362041005',
  '362045001',
  '362044002',
  '181325005',
  '181301002',
  '244231007',
  '181339005',
  '362050007',
  '181352000',
  '181346001',
  '181347005',
  '181348000',
  '181349008',
  '181350008',
  '181357006',
  '181362007',
];

/** Codes of a temporary namespace seen in published value sets: not for use. */
const TEMPORARY = ['24781000205105', '24791000205107'];

/**
 * Peripheral pulse locations and their codes as one published context group has them.
 * Source: DICOM PS3.16 CID 3440, as value set in bvdh/dicom-terminology-in-fhir, commit 9f098270ff7180e43a8df1a2eef0130b72231d5b.
 */
const CID_3440 = {
  brachial: '17137000',
  'dorsalis-pedis': '86547008',
  'common-femoral': '7657000',
  popliteal: '43899006',
  'posterior-tibial': '13363002',
  radial: '45631007',
  ulnar: '44984001',
} as const;

const snomed = ARTERY_IDS.flatMap((id) => Object.values(ARTERY_CODES[id].snomed ?? {}) as string[]);

describe('the check digits themselves', () => {
  it('accept published codes', () => {
    // SNOMED CT and LOINC codes printed in HL7 FHIR R4: palpation method, right, left; systolic pressure, heart rate, pulse intensity, pressure panel.
    for (const id of ['113011001', '24028007', '7771000', '420717009']) expect(isSnomedId(id)).toBe(true);
    for (const code of ['8480-6', '8867-4', '44974-4', '85354-9']) expect(isLoincCode(code)).toBe(true);
  });

  it('reject every single wrong digit and every swap of neighbours', () => {
    const id = '86547008';
    for (let i = 0; i < id.length; i += 1) {
      for (const digit of '0123456789') {
        if (digit !== id[i]) expect(isSnomedId(id.slice(0, i) + digit + id.slice(i + 1))).toBe(false);
      }
      const swapped = id.slice(0, i) + (id[i + 1] ?? '') + (id[i] ?? '') + id.slice(i + 2);
      if (swapped !== id) expect(isSnomedId(swapped)).toBe(false);
    }
    expect(isLoincCode('8480-5')).toBe(false);
    expect(isLoincCode('4897-4')).toBe(false);
  });
});

describe('codes of the arteries', () => {
  it('carry right SNOMED CT check digits', () => {
    expect(snomed.length).toBeGreaterThan(40);
    for (const id of snomed) expect(isSnomedId(id), id).toBe(true);
  });

  it('use one code for one artery, but for the two parts of the abdominal aorta', () => {
    const seen = ARTERY_IDS.filter((id) => id !== 'infrarenal-aorta').flatMap((id) => {
      const { uberon, fma, snomed: own } = ARTERY_CODES[id];
      return [uberon, fma, ...Object.values(own ?? {})].filter((code) => code !== undefined);
    });
    expect(new Set(seen).size).toBe(seen.length);
    expect(ARTERY_CODES['infrarenal-aorta']).toEqual(ARTERY_CODES['suprarenal-aorta']);
  });

  it('leave out codes that mean the entire artery, and temporary ones', () => {
    for (const code of [...ENTIRE, ...TEMPORARY]) expect(snomed).not.toContain(code);
  });

  it('agree with the DICOM list of peripheral pulse locations', () => {
    for (const [artery, code] of Object.entries(CID_3440)) {
      expect(ARTERY_CODES[artery as keyof typeof CID_3440].snomed?.structure).toBe(code);
    }
  });

  it('have the form of their terminology', () => {
    for (const id of ARTERY_IDS) {
      const { uberon, fma } = ARTERY_CODES[id];
      expect(fma).toMatch(/^FMA:\d+$/);
      if (uberon) expect(uberon).toMatch(/^UBERON:\d{7}$/);
    }
  });
});

// SNOMED CT identifiers as printed in the DICOM PS3.16 context groups and the HL7 vital-signs value sets.
describe('arteryCodings', () => {
  it('gives the sided code where one is published, else the code of the structure', () => {
    expect(arteryCodings('popliteal', 'left')[0]).toEqual({ system: CODE_SYSTEMS.snomed, code: '25885001' });
    expect(arteryCodings('popliteal', 'right')[0]).toEqual({ system: CODE_SYSTEMS.snomed, code: '57832007' });
    expect(arteryCodings('renal', 'left')[0]).toEqual({ system: CODE_SYSTEMS.snomed, code: '2841007' });
    expect(arteryCodings('aortic-arch', 'midline')[0]).toEqual({
      system: CODE_SYSTEMS.snomed,
      code: '57034009',
    });
  });

  it('leaves SNOMED CT out on request and still names every artery', () => {
    for (const id of ARTERY_IDS) {
      const codings = arteryCodings(id, 'midline', { snomed: false });
      expect(codings.length).toBeGreaterThan(0);
      expect(codings.map((coding) => coding.system)).not.toContain(CODE_SYSTEMS.snomed);
    }
  });
});
