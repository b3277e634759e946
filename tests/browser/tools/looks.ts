import { emulate } from '../../tools/real-input.js';

/** What a page is looked at in. */
export const LOOKS = ['light', 'dark', 'in forced colours'] as const;
export type Look = (typeof LOOKS)[number];

/** Puts the page into one look; what is drawn afterwards has it from the start. */
export async function put(look: Look): Promise<void> {
  if (look === 'in forced colours') await emulate({ forcedColors: 'active' });
  document.documentElement.style.cssText = `color-scheme: ${look === 'dark' ? 'dark' : 'light'}; background: Canvas; color: CanvasText`;
}

/** Puts the page back to what it was. */
export async function putBack(): Promise<void> {
  document.documentElement.removeAttribute('style');
  await emulate({});
}
