// The README's examples are cut from applications that the suite builds and runs (tests/hosts): `node .tools/snippets.mjs` cuts them anew.
// In a source a comment `snippet NAME` begins one and `snippet end` ends it; what stands between `snippet hide` and `snippet show` serves
// the test alone. In the README the comment `snippet NAME` stands before the block of code.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { format, resolveConfig } from 'prettier';

const root = fileURLToPath(new URL('..', import.meta.url));
const MARK = /^\s*(?:\/\/|<!--|\{\/\*)\s*snippet ([\w-]+)\s*(?:-->|\*\/\})?\s*$/;
const LANGUAGES = { '.mjs': 'js' };

function dedent(lines) {
  const indents = lines.filter((line) => line.trim()).map((line) => line.search(/\S/));
  const least = Math.min(...indents);
  return lines
    .map((line) => line.slice(least))
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim();
}

/** The snippets of one text, by name. */
export function snippetsIn(text, file) {
  const found = new Map();
  let open;
  let hidden = false;
  for (const line of text.split('\n')) {
    const mark = MARK.exec(line)?.[1];
    if (!mark) {
      if (open && !hidden) open.lines.push(line);
    } else if (mark === 'hide' || mark === 'show') hidden = mark === 'hide';
    else if (mark === 'end') {
      if (!open) throw new Error(`${file}: found "snippet end", expected a snippet before it`);
      found.set(open.name, dedent(open.lines));
      open = undefined;
    } else if (open) throw new Error(`${file}: found "snippet ${mark}", expected the end of ${open.name}`);
    else open = { name: mark, lines: [] };
  }
  if (open || hidden) throw new Error(`${file}: found no end of snippet ${open?.name ?? ''}`);
  return found;
}

function allSnippets() {
  const folder = join(root, 'tests/hosts');
  const found = new Map();
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!/\.(html|tsx?|mjs|vue|svelte)$/.test(path)) continue;
    for (const [name, code] of snippetsIn(readFileSync(join(folder, path), 'utf8'), path)) {
      if (found.has(name)) throw new Error(`${path}: found a second snippet ${name}, expected one`);
      const extension = extname(path);
      found.set(name, { code, language: LANGUAGES[extension] ?? extension.slice(1) });
    }
  }
  return found;
}

/** The text of a Markdown file with every snippet that it names as it stands in the applications. */
export async function withSnippets(markdown) {
  const snippets = allSnippets();
  const cut = markdown.replace(/(<!-- snippet ([\w-]+) -->\n+)```\w*\n[\s\S]*?\n```/g, (_, mark, name) => {
    const snippet = snippets.get(name);
    if (!snippet)
      throw new Error(`found snippet ${name}, expected some of ${[...snippets.keys()].join(', ')}`);
    return `${mark}\`\`\`${snippet.language}\n${snippet.code}\n\`\`\``;
  });
  const readme = join(root, 'README.md');
  return format(cut, { ...(await resolveConfig(readme)), filepath: readme });
}

/** Names of the snippets that a Markdown file shows. */
export const shownIn = (markdown) =>
  [...markdown.matchAll(/<!-- snippet ([\w-]+) -->/g)].map(([, name]) => name);

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const readme = join(root, 'README.md');
  writeFileSync(readme, await withSnippets(readFileSync(readme, 'utf8')));
}
