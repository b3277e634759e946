import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sitesIn, type SiteView } from '../../../src/drawing/index.js';
import {
  type Bruit,
  bruitAt,
  BRUITS,
  emptyExamination,
  type Examination,
  type Grade,
  GRADES,
  pulseAt,
  setBruit,
  setPulse,
} from '../../../src/examination/index.js';
import { messagesFor } from '../../../src/locale/index.js';

const GROIN = { site: 'femoral', side: 'left' } as const;

function record(grade: Grade | undefined, bruit: Bruit | undefined): Examination {
  const felt = grade ? setPulse(emptyExamination('words'), GROIN, { grade }) : emptyExamination('words');
  return bruit ? setBruit(felt, GROIN, { bruit }) : felt;
}

const groin = (now: Examination, before: Examination): SiteView =>
  sitesIn('whole', now, before, undefined, undefined, messagesFor('en')).get('left femoral')!;

describe('a site beside an earlier record', () => {
  const anyRecord = fc
    .tuple(
      fc.option(fc.constantFrom(...GRADES), { nil: undefined }),
      fc.option(fc.constantFrom(...BRUITS), { nil: undefined }),
    )
    .map(([grade, bruit]) => record(grade, bruit));

  it('has changed only where what was found then was looked for again, or nothing was', () => {
    fc.assert(
      fc.property(anyRecord, anyRecord, (now, before) => {
        const [pulse, was] = [now, before].map((one) => pulseAt(one, GROIN)?.grade);
        const [bruit, heard] = [now, before].map((one) => bruitAt(one, GROIN)?.bruit);
        const pulseDiffers = was !== undefined && pulse !== was;
        const bruitDiffers =
          heard !== undefined && bruit !== heard && (bruit !== undefined || pulse === undefined);
        expect(groin(now, before).changed).toBe(pulseDiffers || bruitDiffers);
      }),
    );
  });

  it('keeps what was found then apart from what is found now: one part of its name, and the last', () => {
    const { name } = groin(record('normal', undefined), record('normal', 'none'));
    const parts = name.split('; ');
    expect(parts).toHaveLength(2);
    expect(parts[0]).not.toContain('bruit');
    expect(parts[1]).toMatch(/^earlier: .*normal.*no bruit/);
  });

  it('never says that something is what it was', () => {
    fc.assert(
      fc.property(anyRecord, anyRecord, (now, before) => {
        const [, is, was] = /^(.*), was (.*)$/.exec(groin(now, before).finding) ?? [];
        if (was !== undefined) expect(is).not.toBe(was);
      }),
    );
  });

  it.each([
    ['no bruit then, a normal pulse now', record('normal', undefined), record(undefined, 'none'), 'normal'],
    ['no bruit then or now, no pulse now', record('absent', 'none'), record(undefined, 'none'), 'absent'],
    [
      'normal then and now, not listened now',
      record('normal', undefined),
      record('normal', 'none'),
      'normal',
    ],
    ['normal then, absent now', record('absent', 'none'), record('normal', 'none'), 'absent, was normal'],
    [
      'a bruit that is new',
      record('normal', 'systolic'),
      record('normal', 'none'),
      'normal, bruit, was no bruit',
    ],
    ['nothing now', record(undefined, undefined), record('normal', 'none'), 'before: normal'],
  ])('%s', (_, now, before, said) => {
    expect(groin(now, before).finding).toBe(said);
  });
});
