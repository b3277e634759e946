import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BEDSIDE_TEST_IDS, BEDSIDE_TESTS } from '../../../src/bedside/index.js';
import { DEFAULT_PRESSURE_SETTINGS, pressureSettings } from '../../../src/pressures/index.js';
import { type SourcedVerdict, sourcesOf } from '../../../src/statements/index.js';
import { FLAG_CODES } from '../../../src/triage/index.js';

const all: SourcedVerdict[] = [
  ...FLAG_CODES.map((flag) => ({ code: 'flag', flag }) as const),
  ...(['acute', 'fontaine', 'rutherford', 'wound', 'ischaemia', 'infection', 'wifi'] as const).map(
    (scheme) => ({ code: 'stage', scheme }) as const,
  ),
];

describe('the sources of a verdict', () => {
  it('stand behind every flag and every stage, each once', () => {
    for (const verdict of all) {
      const sources = sourcesOf(verdict);
      expect(sources.length, JSON.stringify(verdict)).toBeGreaterThan(0);
      expect(new Set(sources).size).toBe(sources.length);
      for (const source of sources) expect(source.length).toBeGreaterThan(3);
    }
  });

  it('follow the limit of a test: those of the limit used, and of no other', () => {
    for (const test of BEDSIDE_TEST_IDS) {
      const { limits, falsePositives = [], accuracy } = BEDSIDE_TESTS[test];
      for (const { value, source } of limits?.options ?? []) {
        const sources = sourcesOf({ code: 'test', test, limit: value });
        expect(sources).toContain(source);
        for (const { source: rate } of [...falsePositives, ...(accuracy ? [accuracy] : [])])
          expect(sources).toContain(rate);
      }
    }
    const allen = (limit: number) => sourcesOf({ code: 'test', test: 'hand-arch', limit }).join();
    expect(allen(10)).toContain('anaesthesia texts');
    expect(allen(9)).not.toContain('anaesthesia texts');
  });

  it('follow what was measured and the method: nothing measured has none', () => {
    const told = (pressures: object, settings = {}) =>
      sourcesOf({ code: 'pressures', pressures, settings: pressureSettings(settings) });
    expect(told({})).toEqual([]);
    expect(told({ toe: { left: 40 } }).join()).not.toContain('laboratory');
    expect(told({ toe: { left: 40 } }, { threat: 'parc-2015' }).join()).toContain('PARC');
    expect(told({ toe: { left: 40 } }).join()).not.toContain('PARC');
    const both = { brachial: { left: 90 }, 'posterior-tibial': { left: 130 } };
    expect(told(both).join()).toContain('both arms lowered');
    expect(told({ brachial: { left: 90 } }).join()).not.toContain('both arms lowered');
    expect(DEFAULT_PRESSURE_SETTINGS.threat).not.toBe('parc-2015');
  });

  it('stand in no sentence of a language', () => {
    const locale = new URL('../../../src/locale/', import.meta.url);
    for (const path of readdirSync(locale, { recursive: true, encoding: 'utf8' })) {
      // German tells what is said of sources behind the mark.
      if (!path.endsWith('.ts') || path === 'de/citations.ts') continue;
      const code = readFileSync(new URL(path, locale), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
      expect(code, path).not.toMatch(/from memory|no source|aus dem Gedächtnis|ohne Quelle/);
    }
  });
});
