import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';

/** Paths of all modules that an entry loads. */
async function loadedBy(entry: string): Promise<string[]> {
  const { metafile } = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    metafile: true,
    format: 'esm',
    logLevel: 'silent',
  });
  return Object.keys(metafile.inputs);
}

describe('the simulated patient stands apart', () => {
  it('is loaded neither by the core nor by the elements', async () => {
    for (const entry of ['src/core.ts', 'src/index.ts']) {
      expect((await loadedBy(entry)).filter((path) => /src\/(flow|lesson|practice)/.test(path))).toEqual([]);
    }
  });

  it('computes and examines without a schema library, the localisation or words', async () => {
    const loaded = await loadedBy('src/flow/examine.ts');
    expect(
      loaded.filter((path) => /zod|localisation|locale|elements|examination\/schema/.test(path)),
    ).toEqual([]);
    expect(loaded.length).toBeGreaterThan(25);
  });
});
