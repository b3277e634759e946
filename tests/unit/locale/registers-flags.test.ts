import { describe, expect, it } from 'vitest';
import { emptyExamination } from '../../../src/examination/index.js';
import { flagWordsFor, type FlagWords } from '../../../src/locale/flags.js';
import { messagesFor } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import type { Register } from '../../../src/locale/terms.js';
import { MISSING_CODES, stageLeg } from '../../../src/staging/index.js';
import { FLAG_CODES, FLAGS, QUESTION_CODES, type RedFlag, URGENCIES } from '../../../src/triage/index.js';
import { ALL_SAMPLES, LANGUAGE_SAMPLES } from '../../languages/index.js';
import { languageTexts, type Told } from '../../tools/language-check.js';
import { PART_SAMPLES } from '../../tools/word-samples-parts.js';

await LANGUAGE_SAMPLES.de.load();

/** Whom to call, when, and what an act is: in the words of the trade, and of anyone. A register says both or neither. */
const ACTS: Readonly<Record<string, readonly (readonly [trade: RegExp, plain: RegExp])[]>> = {
  en: [
    [/\bnow\b/, /\bnow\b/],
    [/immediately/i, /immediately/i],
    [/same-day/i, /same day/i],
    [/\burgent/i, /\burgent/i],
    [/in that time/, /in that time/],
    [/\bcall\b/i, /\bcall\b/i],
    [/\brefer/i, /\brefer|go to hospital|immediately if/i],
    [/vascular(?! access)/i, /blood-vessel/i],
    [/emergency/i, /emergency/i],
    [/trauma/, /injury/],
    [/surgical/, /surgical/],
    [/access team/, /access team/],
    [/stroke|transient isch/, /stroke/],
    [/diabetic foot service|multidisciplinary foot/i, /diabetic foot team/i],
    [/imaging/i, /scan/i],
    [/rheumatology/, /rheumatology/],
    [/local/, /local/],
    [/do not take/i, /do not take/i],
    [/do not wait/i, /do not wait/i],
  ],
  de: [
    [/\bjetzt\b/i, /\bjetzt\b/i],
    [/\bsofort\b/i, /\bsofort\b/i],
    [/am selben Tag/, /am selben Tag/],
    [/dringend/i, /dringend/i],
    [/in dieser Zeit/i, /in dieser Zeit/i],
    [/\brufen\b/, /\brufen\b/],
    [/Gefäß/i, /Gefäß/i],
    [/Notfall/, /Notfall/],
    [/Trauma/, /Unfall/],
    [/chirurgisch/, /chirurgisch/],
    [/Shuntteam/, /Dialyseteam/],
    [/Schlaganfall/, /Schlaganfall-Plan|für Schlaganfall/],
    [/Fußteam|Fußambulanz überweisen/, /diabetischen Fuß/],
    [/Bildgebung/, /Bilder/],
    [/örtlich|Pfad je nach/i, /örtlich|^Jetzt klären, wann es begann; Plan/i],
    [/nicht für/i, /nicht für/i],
    [/nicht warten/i, /nicht warten/i],
  ],
};

/** Words that a leaflet would not use; a patient meets them nowhere in the plain register of the flags. */
const TRADE: Readonly<Record<string, RegExp>> = {
  en: /ischaem|occlus|perfus|aneurysm|embol|thromb|gangren|\bulcer|stenos|infarct|doppler|proximal|distal|necro|oedema|phlegmas|compartment|systemic|revascular|vascular\b|\bABPI\b|\bCLTI\b|\bALI\b|\bTIA\b|\bSIRS\b|deficit|pathway|motor|sensory|popliteal|ulnar|digital|mottling|aort|lesion/i,
  de: /ischäm|okklus|perfus|aneurysm|embol|thromb|gangrän|ulkus|ulzer|stenos|infarkt|doppler|proximal|distal|nekro|ödem|phlegmas|kompartment|systemisch|revaskul|vaskul|\bABI\b|\bCLTI\b|\bALI\b|\bTIA\b|\bSIRS\b|defizit|\bPfad|motorisch|sensib|poplitea|ulnaris|digital|marmorier|aort|läsion|extremität/i,
};

const LIMBS: RedFlag['limb'][] = [
  undefined,
  ...(['leg', 'arm'] as const).flatMap((kind) =>
    (['left', 'right'] as const).map((side) => ({ kind, side }) as const),
  ),
];
const ALL: readonly RedFlag[] = FLAG_CODES.flatMap((code) =>
  LIMBS.flatMap((limb) =>
    URGENCIES.map((urgency): RedFlag => ({
      code,
      urgency,
      ...(limb && { limb }),
      because: [],
      whom: FLAGS[code],
      ask: [],
      class: { atLeast: 'IIa', atMost: 'IIb' },
    })),
  ),
);

/** Numbers and classes within a text, sorted. */
const figures = (text: string): string[] => (text.match(/\d+([.,]\d+)?|\b(I{1,3}|IV)[ab]?\b/g) ?? []).sort();

/** Everything a register says of flags on its own, but for the sources, which are cited as printed. */
function everything(words: FlagWords): string[] {
  const { short, changed, elapsed, openFor, byPathway, pageOf } = words.bar;
  return [
    ...ALL.flatMap((flag) => [words.heading(flag), words.action(flag), words.when(flag), short(flag)]),
    words.stillMissing(MISSING_CODES),
    words.ask(QUESTION_CODES),
    ...PART_SAMPLES.flags.ground.map((args) => words.ground(...args)),
    ...PART_SAMPLES.flags.classOpen.map((args) => words.classOpen(...args)),
    ...PART_SAMPLES.flags.hours.map((args) => words.hours(...args)),
    ...PART_SAMPLES.flags.target.map((args) => words.target(...args)),
    ...PART_SAMPLES.flags.bar.elapsed.map((args) => elapsed(...args)),
    ...PART_SAMPLES.flags.bar.changed.map((args) => changed(...args)),
    words.since(6.5),
    ...LIMBS.map(openFor),
    byPathway('xyz'),
    ...[undefined, 'xyz'].map(pageOf),
    words.title,
    words.unread,
    words.caution,
    words.bar.asks,
    words.bar.open,
    words.bar.openPathway,
    words.bar.callNow,
    words.bar.call,
  ];
}

const english = await LANGUAGE_SAMPLES.en.load();
/** What a register says of stages, inspection and the parts of an examination, entry by entry. */
const around = (tag: string, register: Register): readonly Told[] =>
  languageTexts(english, {
    ...messagesFor(tag, register),
    ...partMessagesFor(tag, register),
  }).told.filter(({ path }) => /^(staging|inspection|whole) › (?!summary)/.test(path));

describe.each(ALL_SAMPLES)('stages and inspection in plain words, in $english', ({ tag }) => {
  const [trade, plain] = [around(tag, 'trade'), around(tag, 'plain')];

  it('keep every number, class and grade', () => {
    expect(plain.length).toBe(trade.length);
    plain.forEach(({ path, said }, i) =>
      expect(figures(said), `${path}: ${said}`).toEqual(figures(trade[i]?.said ?? '')),
    );
  });

  it('hold no word of the trade', () => {
    const foreign = TRADE[tag] as RegExp;
    const told = (all: readonly Told[]): string[] =>
      all.filter(({ said }) => foreign.test(said)).map(({ path, said }) => `${path}: ${said}`);
    expect(told(plain)).toEqual([]);
    expect(told(trade).length).toBeGreaterThan(30);
  });
});

describe.each(ALL_SAMPLES)('the flags in plain words, in $english', ({ tag }) => {
  const [trade, plain] = [flagWordsFor(tag), flagWordsFor(tag, 'plain')];

  it('ask for the same act, of the same people, as soon', () => {
    const differing = FLAG_CODES.flatMap((code) => {
      const of = { code } as RedFlag;
      const [ours, theirs] = [trade.action(of), plain.action(of)];
      const wrong = (ACTS[tag] ?? []).filter(([a, b]) => a.test(ours) !== b.test(theirs));
      return wrong.map(([a]) => `${code}: ${String(a)} in "${ours}" or "${theirs}" alone`);
    });
    expect(differing).toEqual([]);
    expect(ACTS[tag]?.length).toBeGreaterThan(15);
  });

  it('keep urgency, side and limb, and every figure and class', () => {
    for (const flag of ALL) {
      for (const say of ['heading', 'when', 'action'] as const)
        expect(figures(plain[say](flag)), plain[say](flag)).toEqual(figures(trade[say](flag)));
      expect(figures(plain.bar.short(flag))).toEqual(figures(trade.bar.short(flag)));
    }
    const times = URGENCIES.map((urgency) => plain.when({ urgency } as RedFlag));
    expect(new Set(times).size).toBe(URGENCIES.length);
    for (const args of PART_SAMPLES.flags.ground)
      expect(figures(plain.ground(...args)), plain.ground(...args)).toEqual(figures(trade.ground(...args)));
    for (const args of PART_SAMPLES.flags.hours)
      expect(figures(plain.hours(...args))).toEqual(figures(trade.hours(...args)));
    for (const args of PART_SAMPLES.flags.target)
      expect(figures(plain.target(...args))).toEqual(figures(trade.target(...args)));
    for (const args of PART_SAMPLES.flags.classOpen)
      expect(figures(plain.classOpen(...args))).toEqual(figures(trade.classOpen(...args)));
  });

  it('name the limb first, each flag in its own words, and claim nothing that the trade leaves open', () => {
    const left = { kind: 'leg', side: 'left' } as const;
    const of = (code: RedFlag['code']): RedFlag => ({ ...(ALL[0] as RedFlag), code, limb: left });
    for (const flag of ALL.filter(({ limb }) => limb)) {
      const limb = plain.bar.openFor(flag.limb).split(':')[0] ?? '';
      expect(plain.heading(flag).startsWith(`${limb}: `), plain.heading(flag)).toBe(true);
      expect(trade.heading(flag).toLowerCase()).toContain(limb.toLowerCase());
    }
    const open = /possible|may|likely|not excluded|\?|Verdacht|möglich|wahrscheinlich|nicht ausgeschlossen/i;
    const hedged =
      /possible|\bmay\b|probably|not ruled out|\?|möglich|wahrscheinlich|nicht ausgeschlossen|vielleicht/i;
    for (const code of FLAG_CODES) {
      if (open.test(trade.heading(of(code)))) expect(plain.heading(of(code))).toMatch(hedged);
    }
    expect(new Set(FLAG_CODES.map((code) => plain.heading(of(code)))).size).toBe(FLAG_CODES.length);
  });

  it('hold no word of the trade', () => {
    const foreign = TRADE[tag] as RegExp;
    expect(everything(plain).filter((text) => foreign.test(text))).toEqual([]);
    // The list finds such words where they are meant to stand.
    expect(everything(trade).filter((text) => foreign.test(text)).length).toBeGreaterThan(100);
  });

  it('say of a wound that was recorded that its grade is missing, not the wound', () => {
    const ulcer = { ...emptyExamination(), inspection: { leg: { right: { ulcer: 'shallow' } } } } as const;
    const { missing } = stageLeg(ulcer, 'right').wifi.stage;
    expect(missing).toContain('wound');
    for (const words of [trade, plain]) expect(words.stillMissing(['wound'])).toMatch(/grade|Grad|grad/);
  });
});
