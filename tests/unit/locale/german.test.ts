import { describe, expect, it } from 'vitest';
import { type Limb, limbKey } from '../../../src/anatomy/index.js';
import { type Examination, restNormal, setBruit, setPulse } from '../../../src/examination/index.js';
import { readByRule } from '../../../src/localisation/index.js';
import { de } from '../../../src/locale/de/register.js';
import { lesionReasons, limbHistoryStatements, ruleLeads } from '../../../src/statements/index.js';
import { ALL_SOURCES } from '../../tools/all-sources.js';
import { examined, FOOT, graded, outwardFrom, place } from '../../tools/examinations.js';

// The terms are those of German vascular medicine (Becken-, Oberschenkel-, Unterschenkeletage; supra- and infragenual;
// Strömungsgeräusch), the grammar that of any German grammar: common practice, from memory.

const leads = (examination: Examination): string[] => ruleLeads(readByRule(examination)).map(de.rule.lead);
const reasons = (examination: Examination, limb: Limb): string[] =>
  readByRule(examination)[limbKey(limb)].lesions.map((lesion) =>
    de.rule.reason(lesionReasons(examination, lesion)),
  );

const FEET = graded(
  ['left', 'right'].flatMap((side) => FOOT.map((site) => `${side} ${site}`)),
  'absent',
);

describe('the rule in German', () => {
  it('names bounds after "zwischen", the pulses of a foot in the dative', () => {
    expect(leads(restNormal(examined(graded(outwardFrom('left popliteal').slice(1), 'absent'))))).toEqual([
      'Verschluss zwischen Poplitea links und den Fußpulsen links',
    ]);
  });

  it('takes the genitive after "oberhalb", and one of each gender for more than one', () => {
    expect(leads(examined({ 'left popliteal': 'absent' }))).toEqual([
      'Verschluss oberhalb der Poplitea links',
    ]);
    const both = graded(['left femoral', 'right femoral'].flatMap(outwardFrom), 'reduced');
    expect(leads(restNormal(examined(both)))).toEqual([
      'Stenose oberhalb beider Femoralispulse: an der Aortenbifurkation, oder je eine auf jeder Seite',
    ]);
    expect(leads(examined(FEET))).toEqual([
      expect.stringMatching(
        /^Verschluss oberhalb der Fußpulse beider Seiten: .*, oder je einer auf jeder Seite$/,
      ),
    ]);
  });

  it('gives an artery its article by its gender', () => {
    expect(
      leads(
        examined({
          'left popliteal': 'normal',
          'left posterior-tibial': 'absent',
          'left dorsalis-pedis': 'normal',
        }),
      ),
    ).toEqual(['Verschluss allein des Truncus tibiofibularis links oder der Tibialis posterior links']);
  });

  it('adds a second lesion with the article of its kind', () => {
    const two = { ...graded(outwardFrom('left femoral'), 'absent'), 'left femoral': 'reduced' } as const;
    const [first] = leads(restNormal(examined(two)));
    expect(first).toBe(
      'Stenose zwischen Bauchaorta und Femoralis links; dazu ein Verschluss zwischen Femoralis links und Poplitea links',
    );
  });

  it('says what was found and why a site says nothing', () => {
    const examination = setPulse(
      examined({ 'midline abdominal-aorta': 'normal', 'left popliteal': 'absent' }),
      place('left femoral'),
      { couldNotExamine: 'dressing' },
    );
    expect(reasons(examination, { side: 'left', kind: 'leg' })).toEqual([
      'Bauchaorta tastbar, Poplitea links nicht tastbar. Dazwischen: Aortenbifurkation, Iliaca communis links, Iliaca externa links, Femoralis communis links, Femoralis superficialis links und Poplitea supragenual links. Femoralis links nicht beurteilbar (Verband); deshalb lässt sich der Abschnitt nicht weiter eingrenzen.',
    ]);
  });
});

describe('the map in German', () => {
  it('says a site with all that is recorded there', () => {
    const felt = examined({ 'left femoral': { grade: 'reduced', thrill: true, doppler: 'monophasic' } });
    const { pulses, bruits, scale } = setBruit(felt, place('left femoral'), { bruit: 'systolic' });
    expect(de.map.findings(pulses?.femoral?.left, bruits?.femoral?.left, scale)).toBe(
      '1, schwach; Schwirren; Doppler monophasisch; systolisches Strömungsgeräusch',
    );
  });

  it('says a side once for marks of the same side', () => {
    expect(
      de.marks.where([
        { region: 'forefoot', side: 'left' },
        { region: 'great-toe', side: 'left' },
        { region: 'heel', side: 'right' },
      ]),
    ).toBe('Vorfuß, Großzehe links und Ferse rechts');
  });
});

describe('the other parts in German', () => {
  it('says hours and days in the dative', () => {
    const onset = (hours: number) => limbHistoryStatements({ hours }).map(de.history.limb);
    expect([1, 5, 72].map(onset)).toEqual([['seit 1 Stunde'], ['seit 5 Stunden'], ['seit 3 Tagen']]);
  });

  it('says a segment with its sum and what it points to', () => {
    expect(
      de.pressures.segment(
        {
          code: 'drop',
          side: 'left',
          at: 'calf',
          from: 'high-thigh',
          mmHg: 50,
          limit: 30,
          strength: 'significant',
          levels: ['femoro-popliteal'],
        },
        'kPa',
      ),
    ).toBe(
      'Links: Abfall um 6,7 kPa zwischen Oberschenkel oben und Wade, bedeutsam; spricht für eine Läsion der Oberschenkeletage.',
    );
  });
});

describe('sources in German', () => {
  // What is said of a source; names of works, journals and guidelines stay as they are printed.
  const SAID_IN_ENGLISH =
    /\b(text(book)?s?|teaching|pages?|reviews?|reports?|series|chapter|summary|summarised|memory|practice|variant|form|against|restat\w+|rule|tables? \d|points|limits?|content|figures|distances|convention|after|lower end|guidance|secondary|named|also in|minutes|stiff|toe|from \d)\b/;
  /** Titles that are printed so. */
  const PRINTED =
    /Introduction to the Symptoms and Signs of Surgical Disease|Global Vascular Guidelines on CLTI/g;

  it('are cited as printed, and what is said of them is German', () => {
    const said = ALL_SOURCES.filter((source) => SAID_IN_ENGLISH.test(source));
    expect(said.length).toBeGreaterThan(20);
    const left = ALL_SOURCES.map(de.flags.cite).filter((source) =>
      SAID_IN_ENGLISH.test(source.replace(PRINTED, '')),
    );
    expect(left).toEqual([]);
    // Nothing is lost: every figure of a source is cited.
    const digits = (text: string): string => (text.match(/\d+/g) ?? []).join();
    for (const source of ALL_SOURCES) expect(digits(de.flags.cite(source))).toBe(digits(source));
  });
});
