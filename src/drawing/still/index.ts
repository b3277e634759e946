export {
  type FigureLook,
  type FigureOptions,
  stillBody,
  stillPicture,
  type StillPicture,
  type WordedOptions,
} from './still-picture.js';
export * from './legend.js';
