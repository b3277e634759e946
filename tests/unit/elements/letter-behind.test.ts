import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { behindOf, withoutSentence, withSentence } from '../../../src/elements/limb-letter/behind.js';
import { Edits, readEdits } from '../../../src/elements/limb-letter/edits.js';

/** Sentences of which none lies in another. */
const sentence = fc.integer({ min: 0, max: 60 }).map((at) => `Sentence number ${at} ends.`);
const composed = fc.uniqueArray(sentence, { minLength: 1, maxLength: 8 });

describe('a text of one’s own and the record', () => {
  it('asks of every sentence that is new or no longer so, and of nothing else', () => {
    const then = ['A is absent.', 'B is normal.', 'C is weak.'];
    const now = ['A is absent.', 'B is absent.', 'D is new.'];
    expect(behindOf('A is absent. Mine. B is normal.', then, now)).toEqual({
      missing: ['B is absent.', 'D is new.'],
      outdated: ['B is normal.'],
    });
    expect(behindOf('Quite my own.', then, then)).toBeUndefined();
  });

  it('is settled by its acts, whatever changed, and loses no word of the person’s', () => {
    fc.assert(
      fc.property(composed, composed, fc.nat(), (then, now, place) => {
        const at = place % (then.length + 1);
        let own = [...then.slice(0, at), 'Mine, all mine.', ...then.slice(at)].join(' ');
        for (let acts = 0; ; acts++) {
          expect(acts).toBeLessThan(20);
          const behind = behindOf(own, then, now);
          const [missing, outdated] = [behind?.missing[0], behind?.outdated[0]];
          if (outdated !== undefined) own = withoutSentence(own, outdated).text;
          else if (missing !== undefined) own = withSentence(own, missing, now).text;
          else break;
        }
        expect(own).toContain('Mine, all mine.');
        for (const one of now) expect(own).toContain(one);
        for (const one of then) if (!now.includes(one)) expect(own).not.toContain(one);
        expect(own).not.toMatch(/ {2}|^ | $/);
      }),
    );
  });

  it('puts a sentence behind the one it follows in the letter', () => {
    expect(withSentence('One. Mine. Three.', 'Two.', ['One.', 'Two.', 'Three.'])).toEqual({
      text: 'One. Two. Mine. Three.',
      at: 5,
    });
    expect(withSentence('', 'Two.', ['Two.'])).toEqual({ text: 'Two.', at: 0 });
  });

  it('reads what a page kept, and takes nothing that is no edit', () => {
    const edits = new Edits();
    edits.write('letter', 'Mine.', 'Composed.', ['Composed.']);
    expect(readEdits(JSON.parse(JSON.stringify(edits.all)))).toEqual(edits.all);
    for (const strange of [null, 'x', [], { letter: 'x' }, { letter: { text: 1, from: [] } }, { other: {} }])
      expect(readEdits(strange)).toEqual({});
    edits.renew('letter');
    expect(edits.all).toEqual({});
  });
});
