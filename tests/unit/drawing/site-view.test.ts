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
import '../../../src/locale/de/register.js';

const GROIN = { site: 'femoral', side: 'left' } as const;

function record(grade: Grade | undefined, bruit: Bruit | undefined): Examination {
  const felt = grade ? setPulse(emptyExamination('words'), GROIN, { grade }) : emptyExamination('words');
  return bruit ? setBruit(felt, GROIN, { bruit }) : felt;
}

/** Nothing could be felt there. */
const dressed = setPulse(emptyExamination('words'), GROIN, { couldNotExamine: 'dressing' });
/** No pulse was felt, and nothing could be heard. */
const unheard = setBruit(record('absent', undefined), GROIN, { couldNotExamine: 'dressing' });

const groin = (now: Examination, before: Examination, language: 'en' | 'de' = 'en'): SiteView =>
  sitesIn('whole', now, before, undefined, undefined, messagesFor(language)).get('left femoral')!;

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

  it('leaves what a person wrote then as it was written', () => {
    const note = 'calf warm; foot cool; see photo';
    const before = setPulse(record('absent', 'none'), GROIN, { note });
    const { name } = groin(record('normal', undefined), before);
    expect(name).toBe(`Left femoral: normal; earlier: absent, no bruit, note: ${note}`);
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

  it.each([
    [
      'absent now, under a dressing then',
      record('absent', undefined),
      dressed,
      {
        en: 'absent, before: not assessable: dressing',
        de: 'fehlend, vorher: nicht beurteilbar: Verband',
      },
    ],
    [
      'under a dressing now, normal then',
      dressed,
      record('normal', undefined),
      {
        en: 'not assessable: dressing, before: normal',
        de: 'nicht beurteilbar: Verband, vorher: normal',
      },
    ],
    [
      'nothing now, under a dressing then',
      record(undefined, undefined),
      dressed,
      {
        en: 'before: not assessable: dressing',
        de: 'vorher: nicht beurteilbar: Verband',
      },
    ],
    [
      'absent and not listened to now, normal then',
      unheard,
      record('normal', undefined),
      {
        en: 'absent, auscultation not possible: dressing, before: normal',
        de: 'fehlend, Auskultation nicht möglich: Verband, vorher: normal',
      },
    ],
  ] as const)('a reason is never told as what a pulse is or was: %s', (_, now, before, said) => {
    for (const language of ['en', 'de'] as const)
      expect(groin(now, before, language).finding).toBe(said[language]);
  });
});
