// How far colours stand apart. Source: WCAG 2.2, definitions of relative luminance and contrast ratio.

type Channels = readonly number[];

/** Red, green and blue of a computed colour, 0 to 255. */
export const channels = (colour: string): Channels => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);

export function luminance(colour: Channels): number {
  const [r = 0, g = 0, b = 0] = colour.map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** From 1 for the same colour to 21 for black on white. */
export function contrast(a: Channels, b: Channels): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}
