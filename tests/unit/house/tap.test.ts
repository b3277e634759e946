import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const MAP = new URL('../../../src/elements/pulse-map/', import.meta.url);
const guide = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');

const [, section = ''] = guide.split('### How a tap becomes a record');
const stations = [...section.matchAll(/^\d+\. `([^`]+)` `([^`]+)`/gm)].map(([, file = '', name = '']) => ({
  file,
  name,
}));

/** The lines of a function or method, from its name to the bracket that ends it. */
function bodyOf(file: string, name: string): string {
  const text = readFileSync(new URL(file, MAP), 'utf8');
  const head = new RegExp(`^( *)(?:export function |readonly )?${name}(?:<[^>]*>)?(?:\\(| = \\()`, 'm').exec(
    text,
  );
  if (!head) throw new Error(`${file} has no ${name}`);
  const rest = text.slice(head.index);
  const end = rest.search(new RegExp(`^${head[1] ?? ''}\\}`, 'm'));
  return rest.slice(0, end);
}

describe('the way of a tap from event to record', () => {
  it('has at most seven stations', () => {
    expect(stations.length).toBeGreaterThan(3);
    expect(stations.length).toBeLessThanOrEqual(7);
    expect(stations.at(-1)?.file).toBe('../common/record-store.ts');
  });

  it.each(stations.slice(1).map((to, i) => [stations[i], to] as const))(
    'goes on from %o to %o',
    (from, to) => {
      expect(bodyOf(from?.file ?? '', from?.name ?? '')).toMatch(new RegExp(`[.]${to.name}\\b`));
    },
  );

  it('ends in the history of the record', () => {
    expect(bodyOf('../common/record-store.ts', 'commit')).toContain('record(this.#history');
  });
});

/** Members of an interface that are functions, as `Interface.member`. */
function callbacksIn(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  return source.statements
    .filter(ts.isInterfaceDeclaration)
    .flatMap(({ name, members }) =>
      members
        .filter(
          (member) =>
            ts.isMethodSignature(member) ||
            (ts.isPropertySignature(member) &&
              member.type !== undefined &&
              ts.isFunctionTypeNode(member.type)),
        )
        .map((member) => `${name.text}.${member.name?.getText(source) ?? ''}`),
    );
}

/** Interfaces that classes implement, so that one can go from a call to the method. */
const IMPLEMENTED = ['Tool', 'FigureSkin', 'DigitHost'];

describe('the controllers of the map', () => {
  it('share the session: besides live access to the record nothing is handed round as callbacks', () => {
    const root = fileURLToPath(MAP);
    const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.ts'),
    );
    expect(files.length).toBeGreaterThan(20);
    const found = files.flatMap((name) => callbacksIn(`${root}${name}`));
    expect(found.filter((name) => !IMPLEMENTED.includes(name.split('.')[0] ?? ''))).toEqual([
      'RecordAccess.store',
      'RecordAccess.words',
      'RecordAccess.allWords',
      'RecordAccess.editable',
    ]);
  });
});
