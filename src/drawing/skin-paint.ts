import type { PaintTable } from './paint.js';

/** How the kinds of mark on the skin are painted, in px that the factor for lines leaves alone. */
export const SKIN_PAINT = {
  '.skin path': { fill: 'none', stroke: 'none', join: 'round' },
  '.skin .halo': { stroke: 'body', width: 5 },
  '.skin .edge': { stroke: 'ink', width: 2 },
  '.s-ulcer .fill': { fill: 'paper' },
  '.s-ulcer .texture': { stroke: 'ink', width: 9, dash: '1.6 3.4' },
  '.s-gangrene .fill': { fill: 'ink' },
  '.s-pallor .fill': { fill: 'paper', fillOpacity: 0.8 },
  '.s-pallor .edge': { stroke: 'mute', dash: '5 3.5' },
  '.s-redness .fill': { fill: 'body', fillOpacity: 0.5 },
  '.s-redness .texture': { stroke: 'weak-edge', width: 2.6, dash: '0 6', cap: 'round' },
  '.s-redness .edge': { stroke: 'weak-edge', width: 1.6, dash: '0 3.4', cap: 'round' },
  '.s-cyanosis .fill': { fill: 'body', fillOpacity: 0.5 },
  '.s-cyanosis .texture': { stroke: 'gone', width: 1.5 },
  '.s-cyanosis .edge': { stroke: 'gone', width: 1.5 },
  '.s-cold .edge': { stroke: 'gone', width: 2.6 },
  '.s-cold .teeth': { stroke: 'gone', width: 7, dash: '2.2 5' },
  '.s-scar .edge': { stroke: 'ink-2' },
  '.s-scar .halo': { width: 12 },
  '.s-scar .teeth': { stroke: 'ink-2', width: 9, dash: '1.6 5', dashOffset: -3 },
  '.s-amputation .edge': { width: 5, dash: '11 4 3 4' },
  '.s-amputation .halo': { width: 10 },
} as const satisfies PaintTable;
