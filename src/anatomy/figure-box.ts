/*
 * The box in which the body is drawn and marks on the skin are kept: a patient who faces the reader, 1200 x 1500 units. It is
 * part of the record's form and does not change with the drawing.
 */

export const FIGURE_WIDTH = 1200;
export const FIGURE_HEIGHT = 1500;
/** The midline; the patient's left is beyond it. */
export const AXIS = 600;
