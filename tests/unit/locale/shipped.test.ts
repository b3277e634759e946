import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { TRANSLATIONS } from '../../languages/index.js';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** The modules of words that end up in what a page loads of an entry, now or later; or at once alone. */
async function wordsIn(entry: string, atOnce = false): Promise<string[]> {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    bundle: true,
    splitting: true,
    outdir: 'unused',
    format: 'esm',
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  const needed = new Set<string>();
  const reach = (output: string): void => {
    if (needed.has(output)) return;
    needed.add(output);
    for (const { path, kind } of metafile.outputs[output]?.imports ?? [])
      if (!atOnce || kind === 'import-statement') reach(path);
  };
  reach(Object.entries(metafile.outputs).find(([, { entryPoint }]) => entryPoint === entry)?.[0] ?? '');
  const carried = [...needed].flatMap((output) =>
    Object.entries(metafile.outputs[output]?.inputs ?? {}).flatMap(([path, { bytesInOutput }]) =>
      bytesInOutput > 0 ? [path] : [],
    ),
  );
  return carried.filter((path) => path.startsWith('src/locale/')).sort();
}

describe('what a page carries of the words', () => {
  it('is English alone, and with the map alone none of the other parts but the flags it shows', async () => {
    const areas =
      'american|anatomy|digits|examination|faults|flag-bar|flags|grounds|index|localisation|map|marks|phrases|places|reading|rule|shown|sites|skin-levels|spots|techniques|terms';
    const own = new RegExp(`^src/locale/(en/(${areas})(-later)?(-plain)?|(?!parts)[\\w-]+)\\.ts$`);
    const words = await wordsIn('src/elements/pulse-map/define.ts');
    expect(words).toContain('src/locale/en/map.ts');
    expect(words.filter((path) => !own.test(path))).toEqual([]);
  });

  it('is, before the map’s first paint, none of readings, marks and flags', async () => {
    const words = await wordsIn('src/elements/pulse-map/define.ts', true);
    expect(words).toContain('src/locale/en/map.ts');
    expect(
      words.filter((path) =>
        /(later|localisation|rule|reading|marks|flag|grounds|techniques|faults|en\/anatomy)/.test(path),
      ),
    ).toEqual([]);
  });

  it('is English alone with everything', async () => {
    const words = await wordsIn('src/index.ts');
    expect(words).toContain('src/locale/en/pressures.ts');
    expect(words.filter((path) => /locale\/[a-z-]+\//.test(path) && !path.includes('/en/'))).toEqual([]);
  });

  it.each(TRANSLATIONS)('is $english alone in the entry of $english', async ({ tag }) => {
    const words = await wordsIn(`src/locale/${tag}/register.ts`);
    expect(words).toContain(`src/locale/${tag}/pressures.ts`);
    const folders = words.filter((path) => path.split('/').length > 3);
    expect(folders.filter((path) => !path.startsWith(`src/locale/${tag}/`))).toEqual([]);
  });
});
