import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { levelOf, pieceFromKey } from '../../../src/anatomy/index.js';
import {
  agreementOf,
  findsAnything,
  type Lesson,
  lessonOf,
  parseLesson,
  SHIPPED_LESSON_IDS,
  shippedLesson,
  stepsOf,
} from '../../../src/lesson/index.js';
import { LANGUAGES } from '../../../src/locale/list.js';

const folder = fileURLToPath(new URL('../../../src/lesson/shipped', import.meta.url));
const lessons = await Promise.all(
  SHIPPED_LESSON_IDS.map(async (id): Promise<[string, Lesson]> => [id, await shippedLesson(id)]),
);

/** Limb and level of every lesion that physics was given. */
function lesionsOf({ patient }: Lesson): string[] {
  const all = (patient?.lesions ?? []).flatMap(({ piece }) => {
    const found = pieceFromKey(piece) ?? pieceFromKey(`${piece} proximal`);
    if (!found) throw new Error(`no piece ${piece}`);
    const arm = /arm|axillo|hand/.test(levelOf(found.artery, 'leg'));
    const kind = arm ? 'arm' : 'leg';
    const sides = found.side === 'midline' ? ['right', 'left'] : [found.side];
    return sides.map((side) => `${side} ${kind}: ${levelOf(found.artery, kind)}`);
  });
  return [...new Set(all)].sort();
}

/** Every text of a lesson, with where it stands. */
function textsOf(value: unknown, path = ''): [string, Record<string, string>][] {
  if (typeof value !== 'object' || value === null) return [];
  if ('en' in value || 'de' in value) return [[path, value as Record<string, string>]];
  return Object.entries(value).flatMap(([name, inner]) => textsOf(inner, `${path}.${name}`));
}

describe('the lessons that ship', () => {
  it('are the files of their folder', () => {
    const files = readdirSync(folder).filter((name) => name !== 'index.ts');
    expect(files.map((name) => name.replace('.ts', '')).sort()).toEqual([...SHIPPED_LESSON_IDS].sort());
  });
});

describe.each(lessons)('the lesson %s', (id, lesson) => {
  it('is a valid file, also as JSON', () => {
    const parsed = parseLesson(JSON.parse(JSON.stringify(lesson)));
    expect(parsed).toEqual({ ok: true, value: lesson });
    expect(lesson.id).toBe(id);
    expect(lessonOf(lesson)).toEqual(lesson);
  });

  it('is written in every language of the package, in other words', () => {
    const texts = textsOf(lesson);
    expect(texts.length).toBeGreaterThan(4);
    for (const [path, text] of texts) {
      expect(Object.keys(text).sort(), path).toEqual(LANGUAGES.map(({ tag }) => tag).sort());
      expect(new Set(Object.values(text)).size, path).toBe(LANGUAGES.length);
    }
  });

  it('adds only to steps that it has', () => {
    const steps = stepsOf(lesson).map((step) => step.id);
    expect(Object.keys(lesson.steps).filter((step) => !steps.includes(step))).toEqual([]);
  });

  it('answers what physics was given', () => {
    const told = lesson.answer.lesions.map(({ limb, level }) => `${limb}: ${level}`);
    expect([...told].sort()).toEqual(lesionsOf(lesson));
  });

  it('answers what the reading of its findings concludes, or says that this differs', () => {
    const apart = agreementOf(lesson).filter(({ agrees }) => !agrees);
    expect(apart.length > 0, JSON.stringify(apart)).toBe(lesson.answer.differs !== undefined);
  });

  it('finds something at every pulse, artery and test of its sequence', () => {
    const bare = stepsOf(lesson).filter((step) => !findsAnything(lesson, step.id));
    expect(bare.map((step) => step.id).filter((step) => /^(pulse|listen|test|pressures)/.test(step))).toEqual(
      [],
    );
  });
});
