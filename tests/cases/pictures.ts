import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import * as z from 'zod/mini';
import { type LimbKey, LIMBS, limbKey } from '../../src/anatomy/index.js';
import { type Examination, parseExamination } from '../../src/examination/index.js';
import { readExamination } from '../../src/localisation/index.js';

/*
 * Scores textbook pictures: `npm run pictures -- FILE [--json]`. Without a file, the pictures kept beside this program.
 *
 * A picture is met when the limb's first entry is one of the arteries named and together they carry at least the probability
 * asked for; `['none']` asks that no lesion above one half is claimed on that limb.
 */

const KEPT = new URL('./pictures.json', import.meta.url).pathname;

const pictureSchema = z.object({
  name: z.string(),
  record: z.unknown(),
  limb: z.string(),
  expect: z.object({
    artery: z.array(z.string()).check(z.minLength(1)),
    level: z.optional(z.nullable(z.string())),
    atLeast: z.number(),
  }),
});
export type Picture = z.infer<typeof pictureSchema>;

export interface PictureScore {
  readonly items: number;
  readonly met: number;
  readonly missed: readonly { readonly name: string; readonly got: string; readonly probability: number }[];
}

/**
 * Reads a file of pictures.
 * @throws Error that names the file and the picture
 */
export function readPictures(file: string): Picture[] {
  const input: unknown = JSON.parse(readFileSync(file, 'utf8'));
  if (!Array.isArray(input)) throw new Error(`${file}: found ${typeof input}; expected an array of pictures`);
  return input.map((one: unknown, i) => {
    const result = z.safeParse(pictureSchema, one);
    if (result.success) return result.data;
    throw new Error(`${file}: picture number ${i + 1}, field ${result.error.issues[0]?.path.join('.')}`);
  });
}

/** The record of a picture. What only newer forms of the record hold is handed on as it stands. */
function recordOf({ name, record }: Picture): Examination {
  const given = { format: 'pulse-map/1', scale: 'words', ...(record as object) };
  const parsed = parseExamination(given);
  if (parsed.ok) return { ...given, ...parsed.value } as unknown as Examination;
  console.warn(`picture "${name}": ${JSON.stringify(parsed.faults.slice(0, 2))}`);
  return given as unknown as Examination;
}

function limbOf({ name, limb }: Picture): LimbKey {
  const found = LIMBS.map(limbKey).find((key) => key === limb || key === limb.split(' ').reverse().join(' '));
  if (!found) throw new Error(`picture "${name}": no limb "${limb}"`);
  return found;
}

/** What a limb's first entry is, and what the arteries asked for carry together. */
export function judgePicture(picture: Picture): { met: boolean; got: string; probability: number } {
  const { expect } = picture;
  const { network } = readExamination(recordOf(picture));
  if (network.status !== 'read')
    return { met: expect.artery[0] === 'none', got: network.status, probability: 0 };
  const limb = network.limbs[limbOf(picture)];
  const [first] = limb.occluded.entries;
  const got = `${first!.arteries.join(' + ')} (${first!.level})`;
  if (expect.artery[0] === 'none') {
    const most = Math.max(first!.probability, limb.first?.probability ?? 0);
    return { met: most <= 0.5, got, probability: most };
  }
  const named = (arteries: readonly string[]): boolean => arteries.some((one) => expect.artery.includes(one));
  const probability = limb.occluded.entries
    .filter(({ arteries }) => named(arteries))
    .reduce((sum, entry) => sum + entry.probability, 0);
  const level = !expect.level || first!.level === expect.level;
  return { met: named(first!.arteries) && level && probability >= expect.atLeast, got, probability };
}

export function scorePictures(pictures: readonly Picture[]): PictureScore {
  const judged = pictures.map((picture) => ({ name: picture.name, ...judgePicture(picture) }));
  return {
    items: judged.length,
    met: judged.filter(({ met }) => met).length,
    missed: judged
      .filter(({ met }) => !met)
      .map(({ name, got, probability }) => ({ name, got, probability })),
  };
}

function main(args: readonly string[]): void {
  const file = args.find((arg) => !arg.startsWith('--'));
  const path = file === undefined ? KEPT : resolve(process.env.INIT_CWD ?? '.', file);
  const score = scorePictures(readPictures(path));
  if (args.includes('--json')) {
    console.log(JSON.stringify(score));
    return;
  }
  console.log(`${score.met} of ${score.items} pictures met`);
  for (const { name, got, probability } of score.missed) {
    console.log(`missed: ${name}: ${got}, ${(100 * probability).toFixed(0)}%`);
  }
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  try {
    main(process.argv.slice(2));
  } catch (error) {
    console.error((error as Error).message);
    process.exitCode = 1;
  }
}
