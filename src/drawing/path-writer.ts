/** What a number of path data stands for. */
export type PathUnit = 'unit' | 'tenth' | 'whole';

/**
 * Writes path data, by default to a tenth of a unit, in relative commands: about half as long as absolute ones, without their rounding
 * adding up, since each step is taken from where the last one really ended.
 */
export class PathWriter {
  readonly #per: number;
  /** Steps of a unit to which positions are rounded. */
  readonly #grain: number;
  #data = '';
  /** Current position in steps, and start of the contour. */
  #x = 0;
  #y = 0;
  #startX = 0;
  #startY = 0;

  /**
   * @param unit what a number of the data stands for: a unit, a tenth of one, which needs no decimal points, or a whole unit, to which
   *   positions are then rounded
   */
  constructor(unit: PathUnit = 'unit') {
    this.#per = unit === 'unit' ? 10 : 1;
    this.#grain = unit === 'whole' ? 1 : 10;
  }

  moveTo(x: number, y: number): void {
    this.#x = this.#y = 0;
    this.#data += `M${this.#to(x, y)}`;
    this.#go(x, y);
    this.#startX = this.#x;
    this.#startY = this.#y;
  }

  lineTo(x: number, y: number): void {
    this.#data += `l${this.#to(x, y)}`;
    this.#go(x, y);
  }

  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.#data += `c${this.#to(x1, y1)}${gap(this.#to(x2, y2))}${gap(this.#to(x, y))}`;
    this.#go(x, y);
  }

  /** A half circle to a point. Its radius is left to the renderer, which widens one too small until it just reaches. */
  halfCircleTo(clockwise: boolean, x: number, y: number): void {
    this.#data += `a1 1 0 0 ${clockwise ? 1 : 0}${gap(this.#to(x, y))}`;
    this.#go(x, y);
  }

  closePath(): void {
    this.#data += 'z';
    this.#x = this.#startX;
    this.#y = this.#startY;
  }

  /** Appends contours that another writer of the same unit made; each begins with its own `M`. */
  append(data: string): void {
    this.#data += data;
  }

  toString(): string {
    return this.#data;
  }

  #to(x: number, y: number): string {
    const dx = (Math.round(x * this.#grain) - this.#x) / this.#per;
    const dy = (Math.round(y * this.#grain) - this.#y) / this.#per;
    return dy < 0 ? `${dx}${dy}` : `${dx} ${dy}`;
  }

  #go(x: number, y: number): void {
    this.#x = Math.round(x * this.#grain);
    this.#y = Math.round(y * this.#grain);
  }
}

/** Separates numbers; a minus sign is separator enough. */
function gap(numbers: string): string {
  return numbers.startsWith('-') ? numbers : ` ${numbers}`;
}
