import { describe, expect, it } from 'vitest';
import { emptyExamination, setPulse } from '../../../src/examination/index.js';
import {
  localise,
  parseTables,
  SOURCES,
  TABLES,
  type Tables,
} from '../../../src/localisation/network/index.js';

type Mutable = { -readonly [K in keyof Tables]: Tables[K] } & Record<string, never>;

/** A copy of the tables with one entry replaced, by its path. */
function changed(path: readonly (string | number)[], value: unknown): unknown {
  const copy = structuredClone(TABLES) as unknown as Mutable;
  let at = copy as unknown as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  at[path.at(-1)!] = value;
  return copy;
}

describe('Tables of the network', () => {
  it('pass their own check, and every figure names a known source', () => {
    const parsed = parseTables(TABLES);
    expect(parsed).toEqual({ ok: true, value: TABLES });
    const named = JSON.stringify(TABLES).matchAll(/"source":\[([^\]]*)\]/g);
    const sources = [...named].flatMap((match) => JSON.parse(`[${match[1]}]`) as string[]);
    expect(sources.length).toBeGreaterThan(40);
    for (const source of sources) expect(Object.keys(SOURCES)).toContain(source);
  });

  it.each([
    ['a palpation row', ['palpation', 'femoral', 'normal'], [0.1, 0.1, 0.9], 'sums-to-one'],
    ['the sites of a cause', ['causes', 'focal', 'sites'], { popliteal: 0.5 }, 'sums-to-one'],
    ['a passage', ['passage', 'acute', 'blocked', 0], [0.5, 0.4, 0.2], 'sums-to-one'],
  ])('name %s that does not sum to one', (_, path, value, expected) => {
    const parsed = parseTables(changed(path, value));
    expect(parsed.ok).toBe(false);
    expect(!parsed.ok && parsed.faults).toMatchObject([
      { code: 'conflict', path, expected: { code: expected } },
    ]);
  });

  it('name a missing cause, a weight that breaks the sum, an unknown artery and a probability above one', () => {
    const faults = (path: readonly (string | number)[], value: unknown) => {
      const parsed = parseTables(changed(path, value));
      return parsed.ok ? [] : parsed.faults;
    };
    expect(faults(['causes', 'focal'], undefined)).toMatchObject([{ path: ['causes', 'focal'] }]);
    expect(faults(['causes', 'focal', 'weight', 'acute'], 0.9)).toMatchObject([{ path: ['causes'] }]);
    expect(faults(['causes', 'focal', 'sites'], { knee: 1 })).toMatchObject([
      { path: ['causes', 'focal', 'sites'] },
    ]);
    expect(faults(['sound', 'carries'], 1.5)).toMatchObject([
      { code: 'not-allowed', path: ['sound', 'carries'] },
    ]);
    expect(faults(['sound', 'heardAt', 'femoral'], 'femur')).toMatchObject([
      { path: ['sound', 'heardAt', 'femoral'] },
    ]);
    expect(parseTables(null)).toMatchObject({ ok: false });
  });

  it('refuse a narrowing that makes a weak pulse strong', () => {
    const parsed = parseTables(changed(['passage', 'chronic', 'narrowed', 1], [0.2, 0.4, 0.4]));
    expect(!parsed.ok && parsed.faults[0]?.path).toEqual(['passage', 'chronic', 'narrowed']);
  });

  it('are used where an integrator passes own ones', () => {
    const parsed = parseTables(changed(['causes', 'focal', 'sites'], { 'common-iliac': 1 }));
    if (!parsed.ok) throw new Error('expected the tables to pass');
    const examination = setPulse(
      { ...emptyExamination(), onset: 'chronic' },
      { site: 'popliteal', side: 'left' },
      { grade: 'absent' },
    );
    const iliac = (tables: Tables): number => {
      const reading = localise(examination, { tables });
      return reading.status === 'read' ? reading.pieces['left common-iliac'].blocked : Number.NaN;
    };
    expect(iliac(parsed.value)).toBeGreaterThan(3 * iliac(TABLES));
  });
});
