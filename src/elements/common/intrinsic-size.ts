import { css, type CSSResult } from 'lit';

/**
 * Declarations for a host that is a container of its own size: the width it asks for where its surroundings take their width from
 * what is in them (dialogs, flex rows, table cells, inline boxes), without holding a narrower page open.
 * @param width in CSS px
 */
export function intrinsicSize(width: number): CSSResult {
  return css`
    contain-intrinsic-inline-size: min(${width}px, 90vw);
    min-inline-size: 0;
  `;
}
