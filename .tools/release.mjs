// Makes a release in one command: `npm run release`. Version by the public names, dated changelog, licences checked, tarball tried in an
// empty project, bill of materials and provenance beside it in release/, then a commit and a tag. Publishing is left to a person.
// `npm run release -- --try` does all of it and puts the tree back as it was, without commit and tag.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compareReports } from './api-report.mjs';
import { datedChangelog, licenceFaults, nextVersion, provenance, shipped } from './release-plan.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const trying = process.argv.includes('--try');
const started = new Date().toISOString();
const out = join(root, 'release');
const CHANGES = ['package.json', 'package-lock.json', 'CHANGELOG.md', 'api-report.txt'];

function run(command, args, cwd = root) {
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}: ${error?.message ?? stdout + stderr}`);
  return stdout.trim();
}

const npm = (args, cwd) =>
  process.env.npm_execpath
    ? run(process.execPath, [process.env.npm_execpath, ...args], cwd)
    : run('npm', args, cwd);
const read = (path) => readFileSync(join(root, path), 'utf8');
const write = (path, text) => writeFileSync(join(root, path), text);
const hash = (kind, bytes) => createHash(kind).update(bytes).digest('hex');
const lines = (text) => text.trim().split('\n');
const said = (what) => console.log(what);

/** A file as the last tag has it; before the first release, as it stands. */
function atLastRelease(path) {
  const tag = run('git', ['tag', '--list', 'v*', '--sort=-creatordate']).split('\n')[0];
  return tag ? run('git', ['show', `${tag}:${path}`]) : read(path);
}

/** What a stranger does first with the package: install it where nothing else is, and read an examination. */
const FIRST_STEPS = `
import { emptyExamination, messagesFor, readExamination, restNormal, limbLead, setPulse } from 'pulse-map/core';
import 'pulse-map/locale/de';
import { fromBundle, toBundle } from 'pulse-map/fhir';
await import('pulse-map');
let record = emptyExamination();
for (const site of ['popliteal', 'posterior-tibial', 'dorsalis-pedis'])
  record = setPulse(record, { site, side: 'left' }, { grade: 'absent' });
record = restNormal(record);
const lead = messagesFor('de').rule.lead(limbLead(readExamination(record).rule['left leg']));
const { examination } = fromBundle(toBundle(record, { fhirVersion: 'R4' }));
if (JSON.stringify(examination) !== JSON.stringify(record)) throw new Error('the bundle read back differs');
console.log(lead);
`;

function tryInEmptyProject(tarball) {
  const home = mkdtempSync(join(tmpdir(), 'pulse-map-release-'));
  try {
    writeFileSync(
      join(home, 'package.json'),
      '{ "name": "trial", "version": "0.0.0", "private": true, "type": "module" }',
    );
    npm(['install', '--omit=optional', '--no-audit', '--no-fund', '--prefer-offline', tarball], home);
    writeFileSync(join(home, 'first.mjs'), FIRST_STEPS);
    const sentence = run(process.execPath, ['first.mjs'], home);
    // Here nothing else is installed, so that the bill names what a user gets and no more.
    return { sentence, bill: JSON.parse(npm(['sbom', '--sbom-format', 'cyclonedx'], home)) };
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
}

function release() {
  // Refuses a changelog with nothing to release before minutes go into building.
  datedChangelog(read('CHANGELOG.md'), '0.0.0', started.slice(0, 10));
  const lock = JSON.parse(read('package-lock.json'));
  const faults = licenceFaults(lock);
  if (faults.length) throw new Error(faults.join('\n'));
  said(`${shipped(lock).length} packages ship with this one, all under permitted licences`);

  npm(['run', 'build']);
  const before = lines(atLastRelease('api-report.txt'));
  run(process.execPath, ['.tools/api-report.mjs', '--accept']);
  const names = compareReports(before, lines(read('api-report.txt')));
  const version = nextVersion(JSON.parse(read('package.json')).version, names);
  said(`version ${version}: ${names.added.length} public names new, ${names.removed.length} gone`);

  const { text, notes } = datedChangelog(read('CHANGELOG.md'), version, started.slice(0, 10));
  write('CHANGELOG.md', text);
  npm(['version', version, '--no-git-tag-version', '--allow-same-version']);

  rmSync(out, { recursive: true, force: true });
  mkdirSync(out);
  const [{ filename }] = JSON.parse(npm(['pack', '--json', '--ignore-scripts', '--pack-destination', out]));
  const tarball = join(out, filename);
  const { sentence, bill } = tryInEmptyProject(tarball);
  said(`${filename} tried in an empty project: ${sentence}`);

  const billed = new Set(bill.components.map(({ group, name }) => (group ? `${group}/${name}` : name)));
  const missing = shipped(lock)
    .map(([path]) => path.replace(/^.*node_modules\//, ''))
    .filter((name) => !billed.has(name));
  if (missing.length) throw new Error(`bill of materials: found no ${missing.join(', ')}`);
  write('release/sbom.cdx.json', `${JSON.stringify(bill, null, 2)}\n`);
  said(`bill of materials: ${bill.components.length} components`);
  write('release/notes.md', `${notes}\n`);
  const statement = provenance({
    file: filename,
    sha512: hash('sha512', readFileSync(tarball)),
    version,
    commit: run('git', ['rev-parse', 'HEAD']),
    lockSha256: hash('sha256', read('package-lock.json')),
    node: process.version,
    npm: npm(['--version']),
    started,
    finished: new Date().toISOString(),
  });
  write('release/provenance.json', `${JSON.stringify(statement, null, 2)}\n`);
  return { version, filename };
}

if (!trying && run('git', ['status', '--porcelain'])) {
  console.error('git: found changes, expected none: commit them first');
  process.exit(1);
}
const kept = CHANGES.map((path) => [path, read(path)]);
const putBack = () => kept.forEach(([path, text]) => write(path, text));
try {
  const { version, filename } = release();
  if (trying) {
    putBack();
    said('tried; the tree is as it was');
  } else {
    run('git', ['commit', '-m', `build: release ${version}`, '--', ...CHANGES]);
    run('git', ['tag', '-a', `v${version}`, '-F', 'release/notes.md']);
    said(`tagged v${version}; publish with: npm publish release/${filename} --provenance`);
  }
} catch (error) {
  putBack();
  console.error(error.message);
  process.exitCode = 1;
}
