export {
  figureBody,
  type FigureLook,
  type FigureOptions,
  figureSVG,
  stillPicture,
  type StillPicture,
  type WordedOptions,
} from './figure-svg.js';
export * from './legend.js';
