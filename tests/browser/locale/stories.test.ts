import * as stories from '../../../stories/languages.stories.js';
import { walkStories } from '../tools/stories.js';

/** What a reader finds in each story. */
const SHOWS: Record<Exclude<keyof typeof stories, 'default'>, RegExp> = {
  English: /Occlusion between left femoral and left popliteal/,
  German: /Verschluss zwischen Femoralis links und Poplitea links/,
  GermanTable: /Kopf und Arme/,
  GermanExamination: /Akute Extremitätenischämie wahrscheinlich/,
  RightToLeft: /Occlusion between left femoral and left popliteal/,
  RightToLeftTable: /Trunk and legs/,
};

walkStories('languages', stories, SHOWS);
