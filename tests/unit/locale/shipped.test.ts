import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { TRANSLATIONS } from '../../languages/index.js';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** The modules of words that end up in what a page loads of an entry, now or later. */
async function wordsIn(entry: string): Promise<string[]> {
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
  const carried = Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
  );
  return carried.filter((path) => path.startsWith('src/locale/')).sort();
}

describe('what a page carries of the words', () => {
  it('is English alone, and with the map alone none of the other parts but the flags it shows', async () => {
    const areas =
      'american|anatomy|examination|flag-bar|flags|grounds|index|localisation|map|marks|phrases|reading|rule|sites|skin-levels|spots|terms';
    const own = new RegExp(`^src/locale/(en/(${areas})(-plain)?|(?!parts)[\\w-]+)\\.ts$`);
    const words = await wordsIn('src/elements/pulse-map/define.ts');
    expect(words).toContain('src/locale/en/map.ts');
    expect(words.filter((path) => !own.test(path))).toEqual([]);
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
