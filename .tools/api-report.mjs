// The public names of the built package, one a line, compared with those of the last release in api-report.txt: a name that is gone
// fails, since code of others leans on it. `--accept` writes the present ones, at a release.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('..', import.meta.url));
const stored = join(root, 'api-report.txt');

/** The entries of package.json with declarations; those with a star once for every file they stand for. */
function entries() {
  const { name, exports } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return Object.entries(exports).flatMap(([entry, { types }]) => {
    if (!types) return [];
    const full = entry.replace('.', name);
    if (!types.includes('*')) return [[full, join(root, types)]];
    const [folder, rest] = types.split('*');
    return readdirSync(join(root, folder))
      .map((item) => [full.replace('*', item), join(root, folder + item + rest)])
      .filter(([, file]) => existsSync(file));
  });
}

const isHidden = (node) =>
  ts.isPrivateIdentifier(node.name ?? node) ||
  (ts.getCombinedModifierFlags(node) & (ts.ModifierFlags.Private | ts.ModifierFlags.Protected)) !== 0;

/** What each entry exports, and the members that its classes and interfaces declare themselves. */
function namesOfDeclarations() {
  const found = entries();
  const program = ts.createProgram(
    found.map(([, file]) => file),
    {
      module: ts.ModuleKind.NodeNext,
      target: ts.ScriptTarget.ES2022,
      skipLibCheck: true,
      types: [],
      noEmit: true,
    },
  );
  const checker = program.getTypeChecker();
  const names = new Set();
  for (const [entry, file] of found) {
    const module = checker.getSymbolAtLocation(program.getSourceFile(file));
    for (const exported of module ? checker.getExportsOfModule(module) : []) {
      names.add(`${entry}: ${exported.name}`);
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      if (!(symbol.flags & (ts.SymbolFlags.Class | ts.SymbolFlags.Interface))) continue;
      for (const member of symbol.members?.values() ?? []) {
        const [declaration] = member.declarations ?? [];
        if (!declaration || /^__|Callback$/.test(member.name) || isHidden(declaration)) continue;
        names.add(`${symbol.name}.${member.name}`);
      }
    }
  }
  return [...names];
}

/** What the manifest says of each element, with types where it knows them. */
function namesOfElements() {
  const manifest = JSON.parse(readFileSync(join(root, 'dist/custom-elements.json'), 'utf8'));
  const parts = {
    property: ({ members }) => members.filter(({ kind }) => kind === 'field'),
    method: ({ members }) => members.filter(({ kind }) => kind === 'method'),
    attribute: ({ attributes }) => attributes,
    event: ({ events }) => events,
    slot: ({ slots }) => slots,
    part: ({ cssParts }) => cssParts,
    'custom property': ({ cssProperties }) => cssProperties,
    state: ({ cssStates }) => cssStates,
  };
  return manifest.modules
    .flatMap(({ declarations }) => declarations)
    .flatMap((element) =>
      Object.entries(parts).flatMap(([kind, list]) =>
        (list(element) ?? []).map(({ name, type }) =>
          [`<${element.tagName}> ${kind} ${name}`, type?.text.replace(/\s+/g, ' ')]
            .filter(Boolean)
            .join('\t'),
        ),
      ),
    );
}

/** All public names of the built package, sorted; after a tab what is said of one. */
export const publicNames = () => [...new Set([...namesOfDeclarations(), ...namesOfElements()])].sort();

const byName = (lines) => new Map(lines.map((line) => [line.split('\t')[0], line]));

/** What differs between two reports. */
export function compareReports(before, now) {
  const [old, present] = [byName(before), byName(now)];
  return {
    removed: [...old.keys()].filter((name) => !present.has(name)),
    added: [...present.keys()].filter((name) => !old.has(name)),
    changed: [...present.values()].filter((line) => old.has(line.split('\t')[0]) && !before.includes(line)),
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const now = publicNames();
  if (process.argv[2] === '--accept') {
    writeFileSync(stored, `${now.join('\n')}\n`);
    console.log(`${now.length} public names written`);
  } else {
    const before = readFileSync(stored, 'utf8').trim().split('\n');
    const { removed, added, changed } = compareReports(before, now);
    for (const name of removed) console.error(`gone since the last release: ${name}`);
    for (const line of changed) console.log(`changed: ${line.replace('\t', ' is now ')}`);
    console.log(
      `${now.length} public names, ${added.length} new, ${changed.length} changed, ${removed.length} gone`,
    );
    if (removed.length) process.exitCode = 1;
  }
}
