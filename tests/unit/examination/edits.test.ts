import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Place, PLACES, placeKey, PULSE_PLACES, SIDES } from '../../../src/anatomy/index.js';
import {
  bruitAt,
  clearLimb,
  clearPlace,
  copyFromOtherSide,
  emptyExamination,
  type Examination,
  fillFromOtherSide,
  FORMAT,
  isHeard,
  isStated,
  parseExamination,
  placesOfLimb,
  pulseAt,
  restNormal,
  setBruit,
  setFields,
  setPulse,
  unstatedPlaces,
} from '../../../src/examination/index.js';
import {
  anyExamination,
  anyLimb,
  anyStep,
  bruitPatch,
  listeningPlace,
  pulsePatch,
  pulsePlace,
} from '../../tools/arbitraries.js';
import { examined, mirrored, place } from '../../tools/examinations.js';

const popliteal = place('left popliteal');
const femoral = place('left femoral');

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

describe('setPulse', () => {
  it('records a grade and nothing else', () => {
    expect(setPulse(emptyExamination(), popliteal, { grade: 'absent' })).toEqual({
      format: FORMAT,
      scale: '0-3',
      pulses: { popliteal: { left: { grade: 'absent' } } },
    });
  });

  it('keeps what the patch leaves out', () => {
    const before = examined({ 'left popliteal': { grade: 'reduced', thrill: true, note: 'scar' } });
    expect(pulseAt(setPulse(before, popliteal, { grade: 'absent' }), popliteal)).toEqual({
      grade: 'absent',
      thrill: true,
      note: 'scar',
    });
  });

  it('lets a grade replace a reason, and a reason what was felt, while note and Doppler stay', () => {
    const could = examined({
      'left popliteal': { couldNotExamine: 'cast', doppler: 'biphasic', note: 'plaster' },
    });
    expect(pulseAt(setPulse(could, popliteal, { grade: 'normal' }), popliteal)).toEqual({
      grade: 'normal',
      doppler: 'biphasic',
      note: 'plaster',
    });
    const felt = examined({
      'left popliteal': { grade: 'bounding', increased: true, expansile: true, thrill: true, note: 'wide' },
    });
    expect(pulseAt(setPulse(felt, popliteal, { couldNotExamine: 'pain' }), popliteal)).toEqual({
      couldNotExamine: 'pain',
      note: 'wide',
    });
  });

  it('takes a thrill as proof that the site was felt', () => {
    const could = examined({ 'left popliteal': { couldNotExamine: 'cast' } });
    expect(pulseAt(setPulse(could, popliteal, { thrill: true }), popliteal)).toEqual({ thrill: true });
  });

  it('drops "increased" with the grade it belongs to', () => {
    const felt = examined({ 'left popliteal': { grade: 'bounding', increased: true } });
    expect(pulseAt(setPulse(felt, popliteal, { grade: 'normal' }), popliteal)).toEqual({ grade: 'normal' });
    expect(pulseAt(setPulse(felt, popliteal, { grade: 'bounding' }), popliteal)).toEqual({
      grade: 'bounding',
    });
  });

  it('takes an emptied note away', () => {
    const before = examined({ 'left popliteal': { note: 'scar' } });
    expect(setPulse(before, popliteal, { note: '' })).toEqual(emptyExamination());
  });

  it('refuses sites and sides that do not exist, by name', () => {
    const wrong = { site: 'abdominal-aorta', side: 'left' } as Place;
    expect(() => setPulse(emptyExamination(), wrong, { grade: 'normal' })).toThrow(/"left abdominal-aorta"/);
    expect(() => setPulse(emptyExamination(), place('left renal'), { grade: 'normal' })).toThrow(
      /"left renal"/,
    );
    expect(() => setBruit(emptyExamination(), place('left radial'), { bruit: 'none' })).toThrow(
      /"left radial"/,
    );
  });

  it('always gives a record that validates', () => {
    fc.assert(
      fc.property(anyExamination, pulsePlace, pulsePatch, (before, at, patch) => {
        const after = setPulse(before, at, patch);
        expect(parseExamination(after)).toEqual({ ok: true, value: after });
      }),
      { numRuns: 300 },
    );
  });
});

describe('setBruit', () => {
  it('always gives a record that validates', () => {
    fc.assert(
      fc.property(anyExamination, listeningPlace, bruitPatch, (before, at, patch) => {
        const after = setBruit(before, at, patch);
        expect(parseExamination(after)).toEqual({ ok: true, value: after });
      }),
      { numRuns: 300 },
    );
  });

  it('lets a bruit replace a reason and a reason a bruit', () => {
    const could = setBruit(emptyExamination(), femoral, { couldNotExamine: 'dressing' });
    const heard = setBruit(could, femoral, { bruit: 'systolic' });
    expect(bruitAt(heard, femoral)).toEqual({ bruit: 'systolic' });
    expect(bruitAt(setBruit(heard, femoral, { couldNotExamine: 'pain' }), femoral)).toEqual({
      couldNotExamine: 'pain',
    });
  });
});

describe('every edit', () => {
  it('leaves the examination it was given as it was', () => {
    fc.assert(
      fc.property(anyExamination, anyStep, pulsePlace, anyLimb, (before, step, at, limb) => {
        frozen(before);
        const text = JSON.stringify(before);
        step(before);
        clearPlace(before, at);
        restNormal(before);
        clearLimb(before, limb);
        copyFromOtherSide(before, at);
        fillFromOtherSide(before, limb);
        return JSON.stringify(before) === text;
      }),
    );
  });

  it('that changes nothing returns the very same examination', () => {
    fc.assert(
      fc.property(anyExamination, pulsePlace, anyLimb, (examination, at, limb) => {
        expect(setPulse(examination, at, {})).toBe(examination);
        expect(setFields(examination, {})).toBe(examination);
        const full = restNormal(examination);
        expect(restNormal(full)).toBe(full);
        const cleared = clearLimb(examination, limb);
        expect(clearLimb(cleared, limb)).toBe(cleared);
      }),
    );
  });

  it('survives JSON', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        expect(JSON.parse(JSON.stringify(examination))).toEqual(examination);
      }),
    );
  });
});

describe('clearPlace', () => {
  it('after a set gives what was before', () => {
    fc.assert(
      fc.property(anyExamination, pulsePlace, pulsePatch, (some, at, patch) => {
        const before = clearPlace(some, at);
        expect(clearPlace(setPulse(before, at, patch), at)).toEqual(before);
      }),
    );
  });

  it('takes pulse and bruit of the place, and of no other', () => {
    const both = setBruit(examined({ 'left femoral': 'normal', 'right femoral': 'reduced' }), femoral, {
      bruit: 'systolic',
    });
    expect(clearPlace(both, femoral)).toEqual(examined({ 'right femoral': 'reduced' }));
  });
});

describe('restNormal', () => {
  it('states every pulse and touches none that was stated', () => {
    fc.assert(
      fc.property(anyExamination, (before) => {
        const after = restNormal(before);
        expect(unstatedPlaces(after)).toEqual([]);
        for (const at of PULSE_PLACES) {
          const own = pulseAt(before, at);
          expect(pulseAt(after, at)).toEqual(isStated(own) ? own : { ...own, grade: 'normal' });
        }
        expect(after.bruits).toEqual(before.bruits);
      }),
    );
  });
});

describe('the places of a limb', () => {
  it('share out every place but the midline, once each', () => {
    const limbs = SIDES.flatMap((side) => (['leg', 'arm', 'head'] as const).map((kind) => ({ side, kind })));
    const keys = limbs.flatMap((limb) => placesOfLimb(limb).map(placeKey));
    expect(keys.length).toBe(new Set(keys).size);
    expect(new Set(keys)).toEqual(new Set(PLACES.filter((p) => p.side !== 'midline').map(placeKey)));
  });

  it('are cleared together, and nothing else is', () => {
    fc.assert(
      fc.property(anyExamination, anyLimb, (before, limb) => {
        const after = clearLimb(before, limb);
        const own = new Set(placesOfLimb(limb).map(placeKey));
        for (const at of PLACES) {
          expect(pulseAt(after, at)).toEqual(own.has(placeKey(at)) ? undefined : pulseAt(before, at));
          expect(bruitAt(after, at)).toEqual(own.has(placeKey(at)) ? undefined : bruitAt(before, at));
        }
      }),
    );
  });
});

describe('the other side', () => {
  it('mirrored twice is the examination itself', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        for (const at of PLACES)
          expect(pulseAt(mirrored(mirrored(examination)), at)).toEqual(pulseAt(examination, at));
      }),
    );
  });

  it('is copied to a place, but its note is not, and the note of the place stays', () => {
    const before = examined({
      'right popliteal': { grade: 'bounding', expansile: true, note: 'right knee replaced' },
      'left popliteal': { couldNotExamine: 'cast', note: 'plaster' },
    });
    expect(pulseAt(copyFromOtherSide(before, popliteal), popliteal)).toEqual({
      grade: 'bounding',
      expansile: true,
      note: 'plaster',
    });
  });

  it('copies nothing where it has nothing', () => {
    const before = examined({ 'left popliteal': 'reduced', 'midline abdominal-aorta': 'normal' });
    expect(copyFromOtherSide(before, popliteal)).toBe(before);
    expect(copyFromOtherSide(before, place('midline abdominal-aorta'))).toBe(before);
  });

  it('fills a limb without touching what is stated there, and loses nothing', () => {
    fc.assert(
      fc.property(anyExamination, anyLimb, (before, limb) => {
        const after = fillFromOtherSide(before, limb);
        expect(parseExamination(after).ok).toBe(true);
        const own = new Set(placesOfLimb(limb).map(placeKey));
        for (const at of PLACES) {
          const pulse = pulseAt(before, at);
          if (!own.has(placeKey(at)) || isStated(pulse)) expect(pulseAt(after, at)).toEqual(pulse);
          else if (pulse) expect(pulseAt(after, at)).toMatchObject(pulse);
          else expect(pulseAt(after, at)?.grade).toBe(pulseAt(mirrored(before), at)?.grade);
          const bruit = bruitAt(before, at);
          if (!own.has(placeKey(at)) || isHeard(bruit)) expect(bruitAt(after, at)).toEqual(bruit);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('does not take over a reason where a thrill was felt', () => {
    const before = examined({
      'right popliteal': { couldNotExamine: 'cast' },
      'left popliteal': { thrill: true },
    });
    expect(fillFromOtherSide(before, { side: 'left', kind: 'leg' })).toBe(before);
  });

  it('fills a limb with the grades, reasons and bruits of the other', () => {
    const right: Examination = setBruit(
      examined({
        'right femoral': 'normal',
        'right popliteal': { grade: 'reduced', note: 'deep' },
        'right dorsalis-pedis': { couldNotExamine: 'dressing' },
      }),
      place('right femoral'),
      { bruit: 'systolic' },
    );
    const before = examined({ 'left femoral': 'absent', 'left popliteal': { note: 'scar' } }, right);
    const after = fillFromOtherSide(before, { side: 'left', kind: 'leg' });
    expect(after).toEqual({
      ...before,
      pulses: {
        ...before.pulses,
        femoral: { right: { grade: 'normal' }, left: { grade: 'absent' } },
        popliteal: { right: { grade: 'reduced', note: 'deep' }, left: { grade: 'reduced', note: 'scar' } },
        'dorsalis-pedis': { right: { couldNotExamine: 'dressing' }, left: { couldNotExamine: 'dressing' } },
      },
      bruits: { femoral: { right: { bruit: 'systolic' }, left: { bruit: 'systolic' } } },
    });
  });
});
