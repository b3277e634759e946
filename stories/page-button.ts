/** How a button of the page around looks: WebKit keeps the grey of its own under the white letters of a dark page. */
export const PAGE_BUTTON =
  'color: CanvasText; background: Canvas; border: 1px solid; min-block-size: 44px; font: inherit';
