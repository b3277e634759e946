import { svg, type SVGTemplateResult } from 'lit';

function icon(d: string, kind = ''): SVGTemplateResult {
  return svg`<svg class=${kind} width="20" height="20" viewBox="0 0 20 20" fill="none" stroke="currentColor" stroke-width="1.8" stroke-linecap="round" stroke-linejoin="round" aria-hidden="true"><path d=${d}></path></svg>`;
}

/** Small line icons, always used next to text or on a named button. */
export const ICONS = {
  undo: icon('M7 4 3.5 7.5 7 11M3.8 7.5H11a5 5 0 0 1 0 10H8', 'onward'),
  redo: icon('M13 4 16.500 7.5 13 11M16.200 7.5H9a5 5 0 0 0 0 10H12', 'onward'),
  close: icon('M5 5 15 15M15 5 5 15'),
  pin: icon('M7.500 3H12.500M8.200 3V9L6 12H14L11.800 9V3M10 12V17.500'),
  down: icon('M5 8 10 13 15 8'),
  up: icon('M5 12 10 7 15 12'),
  next: icon('M8 5 13 10 8 15', 'onward'),
  pencil: icon('M4 16 4.600 13 13.500 4.100 15.900 6.500 7 15.400Z'),
  more: icon('M4.500 10H4.600M10 10H10.100M15.500 10H15.600'),
  plus: icon('M4.500 10H15.500M10 4.500V15.500'),
  minus: icon('M4.500 10H15.500'),
  alarm: icon('M10 3 18 16.500H2ZM10 8V12M10 14.300V14.400'),
  info: icon('M10 17.500a7.500 7.500 0 1 0 0-15 7.500 7.500 0 0 0 0 15M10 9.200V13.800M10 6.300V6.400'),
  doppler: icon('M2.500 11H5L7 4.500 10 15.500 12 9 13.500 11H17.500'),
} as const;
