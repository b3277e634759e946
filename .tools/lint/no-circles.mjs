// Forbids circular imports in src, including type-only ones.
import { readFileSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import ts from 'typescript';
import { pathInSrc, srcOf } from './layers.mjs';

const known = new Map();

function specifiersOf(text) {
  return ts.preProcessFile(text, true, true).importedFiles.map((file) => file.fileName);
}

function importsOf(file, text) {
  return specifiersOf(text)
    .filter((specifier) => specifier.startsWith('.'))
    .map((specifier) => resolve(dirname(file), specifier.replace(/\.js$/, '.ts')));
}

function importsOnDisk(file) {
  const stamp = statSync(file, { throwIfNoEntry: false })?.mtimeMs;
  if (stamp === undefined) return [];
  const seen = known.get(file);
  if (seen?.stamp === stamp) return seen.imports;
  const imports = importsOf(file, readFileSync(file, 'utf8'));
  known.set(file, { stamp, imports });
  return imports;
}

/** The shortest way from `first` back to `goal`, as a list of files, or undefined. */
function wayBack(first, goal) {
  const cameFrom = new Map([[first, undefined]]);
  for (const file of cameFrom.keys()) {
    if (file === goal) {
      const way = [];
      for (let step = file; step; step = cameFrom.get(step)) way.unshift(step);
      return way;
    }
    for (const next of importsOnDisk(file)) if (!cameFrom.has(next)) cameFrom.set(next, file);
  }
  return undefined;
}

export const noCircles = {
  meta: { type: 'problem', schema: [], docs: { description: 'no circular imports' } },
  create(context) {
    const src = srcOf(context);
    if (!pathInSrc(context.filename, src)) return {};
    return {
      Program(node) {
        for (const next of importsOf(context.filename, context.sourceCode.text)) {
          const way = wayBack(next, context.filename);
          if (!way) continue;
          const names = [context.filename, ...way].map((file) => pathInSrc(file, src));
          context.report({ node, message: `circular import: ${names.join(' -> ')}` });
        }
      },
    };
  },
};
