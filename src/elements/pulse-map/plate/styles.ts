import { css } from 'lit';

/** Paint of the parts of a plate; --_px is how many tenths of a unit of the plate are one px. */
export const plateStyles = css`
  .plate {
    --_line: calc(var(--_px) * var(--_stroke) * 1px);
  }
  .plate path {
    stroke-linejoin: round;
  }
  .p-shade {
    fill: var(--_body-edge);
    stroke: var(--_body-edge);
    stroke-width: calc(var(--_line) * 1.6);
    transform: translate(calc(var(--_line) * 0.5), calc(var(--_line) * 0.6));
  }
  .p-body {
    fill: var(--_body);
    stroke: var(--_body-edge);
    stroke-width: calc(var(--_line) * 1.6);
  }
  .p-tone {
    fill: var(--_body-edge);
  }
  .p-nail {
    fill: var(--_paper);
    fill-opacity: 0.6;
    stroke: var(--_body-edge);
    stroke-width: var(--_line);
  }
  .p-line,
  .p-bone {
    fill: var(--_body-edge);
    stroke: var(--_body-edge);
    stroke-width: calc(var(--_line) * 0.3);
  }
  .p-behind,
  .p-behind-hollow,
  .p-behind-inside {
    fill: none;
    stroke: var(--_deep);
  }
  .p-behind-hollow {
    stroke: var(--_mute);
  }
  .p-behind-inside {
    stroke: var(--_body);
  }
  .p-deep,
  .p-faint {
    fill: var(--_deep);
  }
  .p-faint {
    fill-opacity: 0.62;
  }
  .p-near,
  .p-thinning {
    fill: var(--_vessel);
  }
  .p-hollow {
    fill: var(--_body);
    stroke: var(--_mute);
    stroke-width: calc(var(--_line) * 1.5);
    paint-order: stroke;
  }
  .p-casing {
    fill: var(--_body);
  }
  .captions {
    font: 400 14px var(--_font);
    fill: var(--_ink-2);
    pointer-events: none;
  }
  .captions .title {
    font-size: 16px;
    font-weight: 600;
    fill: var(--_ink);
  }
`;
