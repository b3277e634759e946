/** The element of a part that knows where its focus goes. */
const INNER = '.body > limb-history, .body > limb-inspection, .body > pulse-map, .body > limb-pressures';

/** Brings an opened part into sight and moves the focus to its first control. */
export async function focusPart(body: HTMLElement | null): Promise<void> {
  body?.scrollIntoView({ block: 'start' });
  const inner = body?.querySelector<HTMLElement & { updateComplete?: Promise<unknown> }>(INNER);
  await inner?.updateComplete;
  const first =
    inner ?? body?.querySelector<HTMLElement>('.body button') ?? body?.querySelector<HTMLElement>('.heading');
  first?.focus({ preventScroll: true });
}
