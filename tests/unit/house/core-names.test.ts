import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as core from '../../../src/core.js';

const src = new URL('../../../src/', import.meta.url);
const text = (path: string) => readFileSync(new URL(path, src), 'utf8');
const entry = text('core.ts');

/** The rooms and the names that the entry takes from each. */
const named = [...entry.matchAll(/export \{([^}]*)\} from '\.\/([^']*)\/[^/']*'/g)].flatMap(
  ([, names, room]) =>
    names!
      .split(',')
      .map((name) => name.trim().replace(/^type /, ''))
      .filter(Boolean)
      .map((name) => ({ name, room: room! })),
);

/** What stands before a declaration, or undefined where there is none. */
function commentOn(name: string, room: string): string | undefined {
  const declaration = new RegExp(
    `(/\\*\\*(?:(?!\\*/)[\\s\\S])*\\*/\\s*)?export (?:declare )?(?:abstract )?(?:const|function|interface|type|class) ${name}\\b`,
  );
  for (const path of readdirSync(new URL(room, src), { recursive: true, encoding: 'utf8' })) {
    const found = path.endsWith('.ts') ? declaration.exec(text(`${room}/${path}`)) : null;
    if (found) return found[1] ?? '';
  }
  return undefined;
}

describe('pulse-map/core', () => {
  it('names each thing it exports, and has about as many as one page lists', () => {
    expect(entry).not.toMatch(/export \*/);
    const names = named.map(({ name }) => name);
    expect(names.length).toBeGreaterThanOrEqual(60);
    expect(names.length).toBeLessThanOrEqual(90);
    expect(new Set(names).size).toBe(names.length);
    for (const name of Object.keys(core)) expect(names).toContain(name);
  });

  it.each(named)('says what $name is for', ({ name, room }) => {
    const comment = commentOn(name, room);
    expect(comment, `found no declaration of ${name} in src/${room}`).toBeDefined();
    expect(comment!.replace(/[^A-Za-z]/g, '').length).toBeGreaterThan(20);
  });
});
