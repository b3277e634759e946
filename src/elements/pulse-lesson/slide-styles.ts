import { css, unsafeCSS } from 'lit';
import { PALETTE } from '../../drawing/palette.js';
import { FIGURE_PAINT, GROUND_PAINT, styleSheetOf } from '../../drawing/index.js';

/** Colours of the slide that a map on it takes over. */
const MAPPED = Object.keys(PALETTE);

/**
 * Slides of 1920 by 1080 units that scale whole; nothing on one is set smaller than 28. They keep the palette for a projector in
 * whatever theme the page has: text at 7:1 at least, on white
 */
export const slideStyles = css`
  :host {
    display: block;
    background: var(--_ground);
  }
  :host(:fullscreen) {
    display: grid;
    place-items: center;
    background: #fff;
  }
  :host(:fullscreen) .frame {
    inline-size: min(100vw, calc(100vh * 16 / 9));
    max-inline-size: none;
  }
  /* A screen too low for the whole map scrolls. */
  :host(:fullscreen) {
    overflow: auto;
  }
  :host(:fullscreen) .controls {
    display: none;
  }
  .frame {
    container-type: inline-size;
    margin-inline: auto;
    /* Bar and title of the page above it, its buttons below. */
    max-inline-size: calc(max(520px, 100dvh - 204px) * 16 / 9);
    border: 1px solid var(--_line);
    background: #fff;
  }
  :host(:fullscreen) .frame {
    border: 0;
  }
  .slide {
    --u: calc(100cqi / 1920);
    --_ground: #fff;
    --_paper: #fff;
    --_well: #fff;
    --_raised: #fff;
    --_ink: #000;
    --_ink-2: #33383f;
    --_line: #9ba0a7;
    --_edge: #4a5058;
    --_pulse: #00474a;
    --_weak: #ffb81f;
    --_weak-edge: #4a3000;
    --_weak-ink: #241a00;
    --_gone: #1b1058;
    --_gone-ink: #fff;
    --_mute: #3c424a;
    --_danger: #8c0f0a;
    --_focus: #4a37d2;
    --_body: #f1eee9;
    --_body-edge: #a89f92;
    --_vessel: #94463f;
    --_deep: #ae665e;
    color-scheme: light;
    position: relative;
    box-sizing: border-box;
    inline-size: 100%;
    /* Of a height that comes from aspect-ratio, WebKit gives what is within no percentage. */
    block-size: calc(1080 * var(--u));
    overflow: hidden;
    padding: calc(48 * var(--u)) calc(64 * var(--u));
    background: var(--_paper);
    color: var(--_ink);
    font-size: calc(34 * var(--u));
    line-height: calc(44 * var(--u));
    outline-offset: -3px;
    touch-action: pan-y;
  }
  .slide.inking,
  .slide.lit {
    cursor: crosshair;
    touch-action: none;
  }
  h2 {
    font-size: calc(72 * var(--u));
    line-height: calc(80 * var(--u));
    font-weight: 700;
    letter-spacing: -0.02em;
    text-wrap: balance;
  }
  .slide h3 {
    font-size: calc(28 * var(--u));
    line-height: calc(36 * var(--u));
    font-weight: 600;
    color: var(--_ink-2);
  }
  .opening {
    display: grid;
    grid-template-columns: 1.1fr 1fr;
    gap: calc(64 * var(--u));
    align-items: center;
    block-size: 100%;
  }
  .opening h2 {
    font-size: calc(108 * var(--u));
    line-height: calc(112 * var(--u));
  }
  .story {
    margin-block-start: calc(32 * var(--u));
    font-size: calc(44 * var(--u));
    line-height: calc(58 * var(--u));
  }
  .by {
    margin-block-start: calc(56 * var(--u));
    font-size: calc(32 * var(--u));
    color: var(--_ink-2);
  }
  .step {
    display: grid;
    grid-template-columns: calc(860 * var(--u)) 1fr;
    gap: calc(64 * var(--u));
    block-size: 100%;
  }
  .seen {
    display: flex;
    flex-direction: column;
    gap: calc(24 * var(--u));
    min-block-size: 0;
  }
  .picture {
    inline-size: 100%;
    block-size: auto;
    border: calc(2 * var(--u)) solid var(--_line);
    border-radius: calc(12 * var(--u));
    overflow: hidden;
  }
  .band {
    padding-inline-start: calc(24 * var(--u));
    border-inline-start: calc(8 * var(--u)) solid var(--_line);
  }
  .band.open {
    border-color: var(--_ink);
  }
  .band h3 + * {
    margin-block-end: calc(12 * var(--u));
  }
  .found li {
    font-size: calc(40 * var(--u));
    line-height: calc(50 * var(--u));
  }
  .listed .found li {
    font-size: calc(30 * var(--u));
    line-height: calc(38 * var(--u));
  }
  .found.many {
    columns: 2;
    column-gap: calc(32 * var(--u));
  }
  .found.many li {
    font-size: calc(28 * var(--u));
    line-height: calc(36 * var(--u));
    break-inside: avoid;
  }
  .found .abnormal {
    font-weight: 700;
  }
  .hidden {
    color: var(--_ink-2);
  }
  .reading {
    font-size: calc(32 * var(--u));
    line-height: calc(40 * var(--u));
  }
  .count {
    font-size: calc(30 * var(--u));
    line-height: calc(40 * var(--u));
    color: var(--_ink-2);
  }
  .how {
    margin-block: calc(12 * var(--u)) calc(20 * var(--u));
    font-size: calc(36 * var(--u));
    line-height: calc(46 * var(--u));
  }
  .question {
    margin-block-end: calc(20 * var(--u));
    padding: calc(14 * var(--u)) calc(24 * var(--u));
    border: calc(3 * var(--u)) solid var(--_ink);
    border-radius: calc(12 * var(--u));
  }
  .meanings li {
    display: flex;
    gap: calc(28 * var(--u));
    align-items: center;
    padding-block: calc(10 * var(--u));
    border-block-start: calc(2 * var(--u)) solid var(--_line);
    font-size: calc(33 * var(--u));
    line-height: calc(42 * var(--u));
  }
  .meanings b {
    display: block;
  }
  .sign {
    flex: none;
    inline-size: calc(68 * var(--u));
    block-size: calc(68 * var(--u));
  }
  .sign svg {
    inline-size: 100%;
    block-size: 100%;
    overflow: visible;
  }
  .caution {
    display: grid;
    grid-template-columns: calc(10 * var(--u)) 1fr;
    gap: calc(24 * var(--u));
    margin-block-start: calc(20 * var(--u));
    font-size: calc(32 * var(--u));
    line-height: calc(41 * var(--u));
  }
  .caution i {
    background: var(--_ink);
  }
  .answer h3 {
    margin-block-start: calc(20 * var(--u));
  }
  .truth {
    font-size: calc(38 * var(--u));
    line-height: calc(48 * var(--u));
    font-weight: 600;
  }
  .second {
    color: var(--_ink-2);
  }
  .sequence {
    display: flex;
    flex-direction: column;
    block-size: 100%;
  }
  .sequence input {
    inline-size: calc(800 * var(--u));
    max-inline-size: 100%;
    margin-block: calc(16 * var(--u));
    padding: calc(10 * var(--u)) calc(20 * var(--u));
    border: calc(2 * var(--u)) solid var(--_edge);
    border-radius: calc(12 * var(--u));
    background: var(--_paper);
    font-size: calc(30 * var(--u));
    line-height: calc(40 * var(--u));
  }
  .sequence ol {
    flex: 1;
    min-block-size: 0;
    columns: 3;
    column-gap: calc(48 * var(--u));
    overflow-y: auto;
  }
  .sequence button {
    display: grid;
    grid-template-columns: calc(56 * var(--u)) 1fr;
    gap: calc(16 * var(--u));
    align-items: center;
    inline-size: 100%;
    padding: calc(8 * var(--u)) 0;
    border: 0;
    border-block-start: calc(2 * var(--u)) solid var(--_line);
    background: none;
    text-align: start;
    font-size: calc(28 * var(--u));
    line-height: calc(34 * var(--u));
    cursor: pointer;
  }
  .sequence b {
    display: grid;
    place-items: center;
    block-size: calc(52 * var(--u));
    border: calc(3 * var(--u)) solid var(--_ink);
    border-radius: 50%;
  }
  .sequence .done b {
    background: var(--_ink);
    color: var(--_paper);
  }
  .sequence [aria-current] b {
    border-color: var(--_focus);
    background: var(--_focus);
    color: var(--_paper);
  }
  .sequence [aria-current] {
    font-weight: 700;
  }
  /* A map is as high as it needs, and keeps the palette of the slide. */
  .slide.mapped {
    block-size: auto;
    overflow: visible;
    padding: 0;
  }
  .marking {
    ${unsafeCSS(MAPPED.map((token) => `--pulse-map-${token}: var(--_${token});`).join(''))}
  }
  .marking strong {
    align-self: center;
    font-size: max(calc(28 * var(--u)), calc(18 * var(--_text)));
    line-height: 1.2;
  }
  .marking .how {
    margin: 0;
    padding: calc(8 * var(--u)) calc(24 * var(--u));
    font-size: max(calc(28 * var(--u)), calc(15 * var(--_text)));
    line-height: 1.3;
  }
  .black {
    position: absolute;
    inset: 0;
    background: #000;
  }
  .over {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
    pointer-events: none;
  }
  .dark {
    fill: #000;
    fill-opacity: 0.72;
    fill-rule: evenodd;
  }
  .stroke {
    fill: none;
    stroke: var(--_focus);
    stroke-width: 9;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  ${unsafeCSS(styleSheetOf(GROUND_PAINT, 'ground'))}
  ${unsafeCSS(styleSheetOf(FIGURE_PAINT))}
  .ring {
    fill: none;
    stroke: var(--_focus);
  }
  .name,
  .letter {
    fill: var(--_focus);
    stroke: var(--_paper);
    font-weight: 700;
    font-family: var(--_font);
    paint-order: stroke;
    stroke-linejoin: round;
  }
  .letter {
    fill: var(--_ink-2);
    stroke: none;
  }
  .finger {
    fill: var(--_paper);
    stroke: var(--_ink);
    stroke-width: 4;
    fill-opacity: 0.9;
  }
  @media (forced-colors: active) {
    .slide {
      forced-color-adjust: none;
    }
    .track i {
      background: Highlight;
      forced-color-adjust: none;
    }
  }
`;
