// What a release decides, as functions of text and data: the version, the changelog, the licences, where the package comes from.

/** Licences under which a package that ships with this one may stand. */
export const LICENCES = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'ISC', 'MIT'];

/**
 * The next version by what became of the public names. Before 1.0.0 what breaks raises the second number, as Semantic Versioning has it.
 * @param {string} version the last one
 * @param {{ removed: readonly string[], added: readonly string[] }} names as `compareReports` tells it
 */
export function nextVersion(version, { removed, added }) {
  const [major, minor, patch] = version.split('.').map(Number);
  if (![major, minor, patch].every(Number.isSafeInteger))
    throw new Error(`version: found "${version}", expected three numbers`);
  if (removed.length && major > 0) return `${major + 1}.0.0`;
  if (removed.length || added.length) return `${major}.${minor + 1}.0`;
  return `${major}.${minor}.${patch + 1}`;
}

const UNRELEASED = '## [Unreleased]\n';

/** The changelog with what is unreleased under its version and day, and what that is. */
export function datedChangelog(text, version, day) {
  const start = text.indexOf(UNRELEASED);
  if (start < 0) throw new Error('CHANGELOG.md: found no "## [Unreleased]"');
  const rest = text.slice(start + UNRELEASED.length);
  const end = rest.search(/^## \[/m);
  const notes = (end < 0 ? rest : rest.slice(0, end)).trim();
  if (!/^- /m.test(notes)) throw new Error('CHANGELOG.md: found nothing under "Unreleased" to release');
  const dated = `${UNRELEASED}\n## [${version}] - ${day}\n`;
  return { text: text.slice(0, start) + dated + rest, notes };
}

/** Packages of a lock file that ship with this one. */
export function shipped({ packages }) {
  return Object.entries(packages).filter(
    ([path, { dev, peer, optional, devOptional }]) => path && !dev && !peer && !optional && !devOptional,
  );
}

/** What is wrong with the licences and the origin of the packages that ship with this one. */
export function licenceFaults(lock) {
  return shipped(lock).flatMap(([path, { license, integrity }]) => [
    ...(LICENCES.includes(license)
      ? []
      : [`${path}: found the licence "${license}", expected one of ${LICENCES.join(', ')}`]),
    ...(integrity ? [] : [`${path}: found no integrity`]),
  ]);
}

/**
 * Where the package comes from, as a statement of in-toto with a predicate of SLSA (https://slsa.dev/spec/v1.0/provenance). It is not
 * signed: `npm publish --provenance` makes the signed one where the publishing service can vouch for itself.
 */
export function provenance({ file, sha512, version, commit, lockSha256, node, npm, started, finished }) {
  return {
    _type: 'https://in-toto.io/Statement/v1',
    subject: [{ name: file, digest: { sha512 } }],
    predicateType: 'https://slsa.dev/provenance/v1',
    predicate: {
      buildDefinition: {
        buildType: 'urn:pulse-map:release',
        externalParameters: { version },
        internalParameters: { node, npm },
        resolvedDependencies: [
          { name: 'source', digest: { gitCommit: commit } },
          { name: 'package-lock.json', digest: { sha256: lockSha256 } },
        ],
      },
      runDetails: {
        builder: { id: 'urn:pulse-map:.tools/release.mjs' },
        metadata: { startedOn: started, finishedOn: finished },
      },
    },
  };
}
