import { describe, expect, it } from 'vitest';
import {
  ARTERY_IDS,
  LEVELS,
  LIMBS,
  limbKey,
  PIECES,
  PLACES,
  placeKey,
  SITE_IDS,
  VESSELS,
  vesselKey,
} from '../../../src/anatomy/index.js';
import { parseExamination, SCALES, SCALE_IDS } from '../../../src/examination/index.js';
import { en, messagesFor, registerLanguage } from '../../../src/locale/index.js';
import { extraStatements } from '../../../src/statements/index.js';
import { list, sentence } from '../../../src/locale/en/phrases.js';

const { anatomy, examination } = en;

function unique(words: readonly string[]): void {
  expect(new Set(words).size).toBe(words.length);
  for (const word of words) expect(word.trim()).not.toBe('');
}

describe('the words of anatomy', () => {
  it('name every artery, site, level and limb, each differently', () => {
    unique(ARTERY_IDS.map((id) => anatomy.arteries[id]));
    unique(SITE_IDS.map((id) => anatomy.sites[id]));
    unique(SITE_IDS.map((id) => anatomy.codes[id]));
    unique(LEVELS.map((level) => anatomy.levels[level]));
    unique(LIMBS.map((limb) => anatomy.limbs[limbKey(limb)]));
  });

  it('tell every place and every vessel apart', () => {
    unique(PLACES.map(anatomy.place));
    unique(VESSELS.map(anatomy.vessel));
  });

  it('name the side first, and none in the midline', () => {
    for (const place of PLACES) {
      const name = anatomy.place(place);
      if (place.side === 'midline') expect(name).not.toMatch(/right|left|midline/);
      else expect(name.startsWith(`${place.side} `), placeKey(place)).toBe(true);
    }
    for (const vessel of VESSELS) {
      const name = anatomy.vessel(vessel);
      if (vessel.side === 'midline' || vessel.artery === 'brachiocephalic')
        expect(name).not.toMatch(/right|left|midline/);
      else expect(name.startsWith(`${vessel.side} `), vesselKey(vessel)).toBe(true);
    }
  });

  it('tell the parts of an artery apart where the trade does', () => {
    const name = (key: string) =>
      anatomy.piece(PIECES.find((piece) => piece.key === key)?.key ?? 'midline aortic-arch');
    expect(name('left popliteal proximal')).toBe('left above-knee popliteal');
    expect(name('left popliteal distal')).toBe('left below-knee popliteal');
    expect(name('midline infrarenal-aorta distal')).toBe('aortic bifurcation');
    expect(name('midline infrarenal-aorta proximal')).toBe('infrarenal aorta');
    expect(name('right common-femoral distal')).toBe('right common femoral');
    expect(name('right brachiocephalic')).toBe('brachiocephalic trunk');
  });

  it('say how to examine every site in a few sentences', () => {
    for (const id of SITE_IDS) {
      expect(anatomy.technique[id]).toMatch(/^[A-Z].*\.$/);
      expect(anatomy.technique[id].length).toBeLessThan(270);
    }
  });

  it('put the finger on the artery: the landmarks that were once told wrong', () => {
    // Standard teaching of surface anatomy, from memory: the ulnar artery lies radial to flexor carpi ulnaris; the carotid sinus at the
    // upper border of the thyroid cartilage; the femoral artery at the mid-inguinal point.
    expect(anatomy.technique.ulnar).toMatch(/radial\) to the flexor carpi ulnaris/);
    expect(anatomy.technique.carotid).toMatch(/never at the upper border of the thyroid cartilage/);
    expect(anatomy.technique.femoral).toMatch(/mid-inguinal point/);
    expect(anatomy.technique.popliteal).toMatch(/lower half .* tibia/);
  });
});

describe('the words of the record', () => {
  it('say each step with its numeral, or the word alone', () => {
    const said = SCALE_IDS.map((id) => SCALES[id].steps.map(examination.step));
    expect(said).toEqual([
      ['0, absent', '1, reduced', '2, normal', '3, bounding'],
      ['0, absent', '1, reduced', '2, normal', '3, increased', '4, bounding'],
      ['absent', 'reduced', 'normal', 'bounding'],
    ]);
  });

  it('say what is felt beside the grade', () => {
    expect(extraStatements({ grade: 'normal' })).toEqual([]);
    expect(extraStatements({ thrill: true, expansile: true, doppler: 'absent' }).map(en.map.found)).toEqual([
      'thrill',
      'expansile',
      'Doppler no signal',
    ]);
    expect(examination.couldNot('line-in-place')).toBe('not assessable: line in place');
  });

  const faults: [string, unknown, string[]][] = [
    [
      'a grade of 7',
      { pulses: { femoral: { left: { grade: 7 } } } },
      ['pulses › femoral › left › grade: found 7; expected "absent", "reduced", "normal" or "bounding".'],
    ],
    [
      'a later version',
      { format: 'pulse-map/2' },
      ['format: found "pulse-map/2", written by a later version than this one; expected "pulse-map/1.1".'],
    ],
    ['a missing scale', { scale: undefined }, ['scale: nothing there; expected "0-3", "0-4" or "words".']],
    [
      'a side that does not exist',
      { pulses: { femoral: { both: {} } } },
      ['pulses › femoral › both: there is no such field or site; expected right or left.'],
    ],
    [
      'a left aorta',
      { pulses: { 'abdominal-aorta': { left: {} } } },
      ['pulses › abdominal-aorta › left: there is no such field or site; expected midline.'],
    ],
    [
      'a contradiction',
      { pulses: { femoral: { left: { grade: 'normal', couldNotExamine: 'cast' } } } },
      ['pulses › femoral › left › couldNotExamine: found "cast"; expected a grade or a reason, not both.'],
    ],
  ];
  for (const [name, fields, sentences] of faults) {
    it(`tell ${name} with field, finding and expectation`, () => {
      const input = { format: 'pulse-map/1', scale: '0-3', ...(fields as object) };
      const parsed = parseExamination(input, { strict: true });
      expect(parsed.ok ? [] : parsed.faults.map(examination.fault)).toEqual(sentences);
    });
  }

  it('tell a value that is no record at all', () => {
    const told = (input: unknown) => {
      const parsed = parseExamination(input);
      return parsed.ok ? [] : parsed.faults.map(examination.fault);
    };
    expect(told([])).toEqual(['the value: found []; expected an object.']);
    expect(
      told(
        new Proxy(
          {},
          {
            get: () => {
              throw new Error('hostile');
            },
          },
        ),
      ),
    ).toEqual(['the value: found object, which cannot be read; expected plain JSON.']);
  });
});

describe('phrases', () => {
  it('join one, two and many', () => {
    expect(list([])).toBe('');
    expect(list(['a'])).toBe('a');
    expect(list(['a', 'b'])).toBe('a and b');
    expect(list(['a', 'b', 'c'], 'or')).toBe('a, b or c');
  });
  it('begin a sentence large', () => {
    expect(sentence('left leg')).toBe('Left leg');
    expect(sentence('')).toBe('');
  });
});

describe('languages', () => {
  it('are found by tag, by base language, and else in English', () => {
    const other = { ...en, rule: { ...en.rule, nothing: 'Nihil' } };
    registerLanguage('la', other);
    expect(messagesFor('la').rule.nothing).toBe('Nihil');
    expect(messagesFor('LA-VA').rule.nothing).toBe('Nihil');
    expect(messagesFor('xx')).toBe(en);
    expect(messagesFor('')).toBe(en);
    expect(messagesFor('en-GB')).toBe(en);
  });
});
