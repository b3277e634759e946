/** A rectangle in px of the window. */
interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const GAP = 34;
const MARGIN = 8;

function overlap(a: Box, b: Box): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}

/**
 * Where a panel stands: beside its site on the outer side, else on the inner side, below or above; fully on screen, never over
 * its own site, over as few other sites as possible.
 * @param site box of the site's target
 * @param others boxes of the other sites
 * @param size of the panel
 * @param screen size of the window
 * @param outward 1 when the label lane is to the right of the site, -1 to the left
 */
function placeBeside(
  site: Box,
  others: readonly Box[],
  size: { width: number; height: number },
  screen: { width: number; height: number },
  outward: 1 | -1,
): { left: number; top: number } {
  const middle = (site.top + site.bottom) / 2;
  const centre = (site.left + site.right) / 2;
  const beside = (sign: number): { left: number; top: number } => ({
    left: sign > 0 ? site.right + GAP : site.left - GAP - size.width,
    top: middle - size.height * 0.42,
  });
  const candidates = [
    beside(outward),
    beside(-outward),
    { left: centre - size.width / 2, top: site.bottom + GAP / 2 },
    { left: centre - size.width / 2, top: site.top - GAP / 2 - size.height },
  ];
  let best = { left: MARGIN, top: MARGIN };
  let least = Infinity;
  candidates.forEach((wanted, i) => {
    const left = Math.max(MARGIN, Math.min(wanted.left, screen.width - size.width - MARGIN));
    const top = Math.max(MARGIN, Math.min(wanted.top, screen.height - size.height - MARGIN));
    const box = { left, top, right: left + size.width, bottom: top + size.height };
    const covered = others.filter((other) => overlap(box, other) > 0).length;
    const cost = overlap(box, site) * 1000 + covered * 10 + i;
    if (cost < least) {
      least = cost;
      best = { left, top };
    }
  });
  return best;
}

/**
 * Puts an open panel beside what it is about.
 * @param own what it is open for; nothing where a style sheet puts the panel at the foot of a narrow screen
 * @param others what it had better not cover; `own` may be among them
 * @param outward 1 when the room is to the right, -1 to the left
 */
export function hangPanel(
  panel: HTMLElement,
  own: Element | null,
  others: Iterable<Element>,
  outward: 1 | -1,
): void {
  const { style } = panel;
  if (!own) {
    style.removeProperty('left');
    style.removeProperty('top');
    return;
  }
  // offsetWidth and offsetHeight are those before CSS zoom on large screens, which WebKit tells by the style alone.
  const zoom = panel.currentCSSZoom ?? Number(getComputedStyle(panel).zoom);
  const { left, top } = placeBeside(
    own.getBoundingClientRect(),
    [...others].filter((other) => other !== own).map((other) => other.getBoundingClientRect()),
    { width: panel.offsetWidth * zoom, height: panel.offsetHeight * zoom },
    { width: document.documentElement.clientWidth, height: window.innerHeight },
    outward,
  );
  style.left = `${left / zoom}px`;
  style.top = `${top / zoom}px`;
}
