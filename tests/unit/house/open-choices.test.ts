import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BEDSIDE_TESTS } from '../../../src/bedside/index.js';
import { METHODS } from '../../../src/examination/index.js';
import { DEFAULT_PRESSURE_SETTINGS } from '../../../src/pressures/index.js';
import { DEFAULT_TRIAGE_SETTINGS, OPEN_CHOICES } from '../../../src/core.js';

const page = readFileSync(new URL('../../../stories/triage.mdx', import.meta.url), 'utf8');
const decisions = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');

/** Rows of the tables of the page: what is set, its default, and what else it may be. */
const rows = [...page.matchAll(/^\| `([^`]+)`\s*\| ([^|]+)\| ([^|]+)\| ([^|]+)\|$/gm)].map(
  ([, setting, usual, otherwise, decides]) => ({
    setting: setting ?? '',
    usual: usual?.trim(),
    otherwise: otherwise?.trim().split(', '),
    decides: decides?.trim() ?? '',
  }),
);
const row = (setting: string) => rows.find((one) => one.setting === setting);
const at = (path: string) =>
  path
    .split('.')
    .reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], DEFAULT_TRIAGE_SETTINGS);

describe('the page of the choices that a clinician should sign', () => {
  it.each(OPEN_CHOICES)(
    'names $setting with its default and what else it may be',
    ({ setting, otherwise }) => {
      expect(row(setting)).toMatchObject({ usual: String(at(setting)), otherwise: otherwise.map(String) });
      expect(row(setting)?.decides.length).toBeGreaterThan(10);
    },
  );

  it('names the criterion of limb threat and the limits of Allen and Buerger', () => {
    const { threat } = DEFAULT_PRESSURE_SETTINGS;
    expect(row('threat')).toMatchObject({
      usual: threat,
      otherwise: METHODS.threat.filter((name) => name !== threat),
    });
    for (const id of ['hand-arch', 'elevation'] as const) {
      const { usual, options } = BEDSIDE_TESTS[id].limits ?? { usual: 0, options: [] };
      const others = options.map(({ value }) => value).filter((value) => value !== usual);
      expect(row(id)).toMatchObject({ usual: String(usual), otherwise: others.map(String) });
    }
  });

  it('names nothing else', () => {
    const known = [...OPEN_CHOICES.map(({ setting }) => setting), 'threat', 'hand-arch', 'elevation'];
    expect(rows.map(({ setting }) => setting).sort()).toEqual(known.sort());
  });

  it('is where the decisions of the project point to', () => {
    expect(decisions).toContain('stories/triage.mdx');
  });
});
