// Whatever comes in spoilt, each reader ends soon, with an answer and without an exception, and says nothing that it would not read again.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseStopwatch } from '../../../src/bedside/index.js';
import { formatExamination, MOST_FAULTS, parseExaminationText } from '../../../src/examination/index.js';
import { fromBundle, toBundle } from '../../../src/fhir.js';
import '../../../src/locale/de/register.js';
import { readNote } from '../../../src/notes/index.js';
import { readPathway } from '../../../src/triage/index.js';
import { recordFrom } from '../../tools/any-record.js';
import { runs } from '../../tools/runs.js';
import { spoilt } from '../../tools/spoilt.js';

const SEEDS = [1, 2, 3, 4, 5, 6];
const records = SEEDS.map((seed) => recordFrom(seed, 0.1 + seed / 20, seed % 2 ? 0 : 0.03));

/** Longest that one reading may take, in ms: thousands of times what it takes on a quiet machine, since a busy one may stand still for seconds. */
const SLOWEST = 60_000;

function soon<T>(read: () => T): T {
  const start = performance.now();
  const result = read();
  expect(performance.now() - start).toBeLessThan(SLOWEST);
  return result;
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const unpolluted = () => expect('polluted' in {}).toBe(false);

describe('a text spoilt on its way', () => {
  it('is a record that is read again the same, or has faults', () => {
    let read = 0;
    fc.assert(
      fc.property(spoilt(records.map(formatExamination)), (text) => {
        const parsed = soon(() => parseExaminationText(text));
        if (parsed.ok) {
          read += 1;
          expect(parseExaminationText(formatExamination(parsed.value))).toEqual(parsed);
        } else expect(parsed.faults.length >= 1 && parsed.faults.length <= MOST_FAULTS).toBe(true);
        unpolluted();
      }),
      { numRuns: runs(500) },
    );
    expect(read, 'some are still records').toBeGreaterThan(0);
  });

  it('is a bundle of which a valid record is read', () => {
    let read = 0;
    const bundles = records.map((record) => JSON.stringify(toBundle(record)));
    fc.assert(
      fc.property(spoilt(bundles), (text) => {
        const json = jsonOf(text);
        if (json === undefined) return;
        read += 1;
        const { examination } = soon(() => fromBundle(json));
        const again = parseExaminationText(formatExamination(examination));
        expect(again).toEqual({ ok: true, value: examination });
        unpolluted();
      }),
      { numRuns: runs(150) },
    );
    expect(read, 'some are still JSON').toBeGreaterThan(0);
  });

  it('is a note of which everything read stands in it', () => {
    const notes = [
      'Femorals 2+ bilaterally, left popliteal absent, no bruits. R DP Doppler biphasic; PT not felt.',
      'Rechts Leiste kräftig, links Kniekehle nicht tastbar, Fußpulse bds. fehlend, Strömungsgeräusch links.',
    ];
    fc.assert(
      fc.property(spoilt(notes), fc.constantFrom('en' as const, 'de' as const), (text, language) => {
        const { findings, doubts } = soon(() => readNote(text, { scale: '0-3', language }));
        for (const { spans } of [...findings, ...doubts])
          for (const { start, end } of spans)
            expect(0 <= start && start < end && end <= text.length).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  it('is a watch or a pathway, or is refused', () => {
    const watch = '{"elapsed":1500,"startedAt":1000,"laps":[{"at":10,"label":"refill"}],"countdown":60000}';
    const pathway =
      '{"name":"A","calls":{"vascular":{"name":"B","telephone":"+44 1632 960961"}},"settings":{"triage":{"refillOver":3}}}';
    fc.assert(
      fc.property(spoilt([watch]), spoilt([pathway]), (one, other) => {
        expect(typeof soon(() => parseStopwatch(one)).ok).toBe('boolean');
        expect(Array.isArray(soon(() => readPathway(jsonOf(other))).faults)).toBe(true);
        unpolluted();
      }),
      { numRuns: runs(300) },
    );
  });
});
