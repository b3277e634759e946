/** The visits of a patient on a page, as buttons that open them, the latest last. */
export const visitButtons = (page: Element): HTMLButtonElement[] => [
  ...(page.querySelector('limb-visits')?.shadowRoot?.querySelectorAll<HTMLButtonElement>('li .open') ?? []),
];
