import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  datedChangelog,
  LICENCES,
  licenceFaults,
  nextVersion,
  provenance,
  shipped,
} from '../../../.tools/release-plan.mjs';

const NOTHING = { removed: [], added: [] };
const root = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));
const read = (path: string) => readFileSync(root(path), 'utf8');
const lock = JSON.parse(read('package-lock.json')) as Parameters<typeof licenceFaults>[0];

describe('the next version', () => {
  // Semantic Versioning 2.0.0, 4 and 8: https://semver.org/spec/v2.0.0.html
  it.each([
    ['1.4.2', NOTHING, '1.4.3'],
    ['1.4.2', { removed: [], added: ['a'] }, '1.5.0'],
    ['1.4.2', { removed: ['a'], added: ['b'] }, '2.0.0'],
    ['0.4.2', { removed: ['a'], added: [] }, '0.5.0'],
    ['0.4.2', { removed: [], added: ['a'] }, '0.5.0'],
    ['0.4.2', NOTHING, '0.4.3'],
  ])('after %s with %j is %s', (version, names, next) => {
    expect(nextVersion(version, names)).toBe(next);
  });

  it('is always later than the last', () => {
    const names = fc.array(fc.string(), { maxLength: 2 });
    fc.assert(
      fc.property(fc.tuple(fc.nat(99), fc.nat(99), fc.nat(99)), names, names, (last, removed, added) => {
        const next = nextVersion(last.join('.'), { removed, added }).split('.').map(Number);
        const first = next.findIndex((part, i) => part !== last[i]);
        expect(next[first]).toBe(last[first]! + 1);
        expect(next.slice(first + 1).every((part) => part === 0)).toBe(true);
      }),
    );
  });

  it('refuses what is no version', () => {
    expect(() => nextVersion('next', NOTHING)).toThrow('found "next", expected three numbers');
  });
});

describe('the changelog of a release', () => {
  it('has what was unreleased under its version and day, and room for what comes', () => {
    const { text, notes } = datedChangelog(read('CHANGELOG.md'), '9.9.9', '2026-11-26');
    expect(text).toContain('## [Unreleased]\n\n## [9.9.9] - 2026-11-26\n\n###');
    expect(notes).toMatch(/^### /);
    expect(notes).not.toContain('\n## [');
  });

  it('refuses a release of nothing', () => {
    expect(() => datedChangelog('## [Unreleased]\n\n## [0.1.0]\n- a', '0.2.0', '2026-11-26')).toThrow(
      'found nothing under "Unreleased"',
    );
    expect(() => datedChangelog('# Changelog', '0.2.0', '2026-11-26')).toThrow('found no');
  });
});

describe('a release that comes too early', () => {
  it('is refused before anything is built, and leaves the tree as it was', () => {
    const home = mkdtempSync(join(tmpdir(), 'pulse-map-early-'));
    try {
      cpSync(root('.tools'), join(home, '.tools'), { recursive: true });
      symlinkSync(root('node_modules'), join(home, 'node_modules'), 'junction');
      const files = {
        'package.json': JSON.stringify({ version: '0.1.0', scripts: { build: 'node -e "process.exit(3)"' } }),
        'package-lock.json': '{ "packages": {} }',
        'CHANGELOG.md': '# Changelog\n\n## [Unreleased]\n\n## [0.1.0]\n\n- a\n',
        'api-report.txt': '',
      };
      for (const [name, text] of Object.entries(files)) writeFileSync(join(home, name), text);
      const { status, stdout, stderr } = spawnSync(process.execPath, ['.tools/release.mjs', '--try'], {
        cwd: home,
        encoding: 'utf8',
      });
      expect([status, stdout, stderr.trim()]).toEqual([
        1,
        '',
        'CHANGELOG.md: found nothing under "Unreleased" to release',
      ]);
      for (const [name, text] of Object.entries(files))
        expect(readFileSync(join(home, name), 'utf8')).toBe(text);
    } finally {
      rmSync(home, { recursive: true, force: true });
    }
  });
});

describe('the licences of what ships', () => {
  it('are permitted, each package with its integrity', () => {
    expect(shipped(lock).length).toBeGreaterThan(10);
    expect(licenceFaults(lock)).toEqual([]);
  });

  it('are told when one is not, or is missing', () => {
    const packages = {
      '': {},
      'node_modules/a': { license: 'GPL-3.0', integrity: 'x' },
      'node_modules/b': { license: LICENCES[0] },
      'node_modules/c': { dev: true },
    };
    expect(licenceFaults({ packages })).toEqual([
      expect.stringContaining('node_modules/a: found the licence "GPL-3.0"'),
      'node_modules/b: found no integrity',
    ]);
  });
});

describe('the provenance', () => {
  it('names the file by its digest, the commit and the lock file', () => {
    const given = {
      file: 'pulse-map-1.0.0.tgz',
      sha512: 'ab',
      version: '1.0.0',
      commit: 'c0',
      lockSha256: 'cd',
      node: 'v20',
      npm: '11',
      started: '2026-11-26T10:00:00Z',
      finished: '2026-11-26T10:01:00Z',
    };
    const { subject, predicate } = provenance(given);
    expect(subject).toEqual([{ name: given.file, digest: { sha512: 'ab' } }]);
    expect(predicate.buildDefinition.resolvedDependencies).toEqual([
      { name: 'source', digest: { gitCommit: 'c0' } },
      { name: 'package-lock.json', digest: { sha256: 'cd' } },
    ]);
  });
});
