import { describe, expect, it } from 'vitest';
import { judgePicture, readPictures } from '../../cases/pictures.js';

/* Textbook pictures: common practice, no source, unless the picture names the series. */

const pictures = readPictures(new URL('../../cases/pictures.json', import.meta.url).pathname);

describe('Textbook pictures', () => {
  it('are at least forty, of legs and arms, acute and chronic', () => {
    expect(pictures.length).toBeGreaterThanOrEqual(40);
    for (const word of ['leg', 'arm']) expect(pictures.some(({ limb }) => limb.includes(word))).toBe(true);
  });

  it.each(pictures.map((picture) => [picture.name, picture] as const))('%s', (_, picture) => {
    const { met, got, probability } = judgePicture(picture);
    expect({ met, got, probability }).toMatchObject({ met: true });
  });
});
