import * as changes from '../../../stories/limb-changes.stories.js';
import * as letter from '../../../stories/limb-letter.stories.js';
import * as note from '../../../stories/limb-note.stories.js';
import * as observations from '../../../stories/limb-observations.stories.js';
import * as report from '../../../stories/limb-report.stories.js';
import * as unconfirmed from '../../../stories/limb-unconfirmed.stories.js';
import * as visits from '../../../stories/limb-visits.stories.js';
import * as editor from '../../../stories/pulse-lesson-editor.stories.js';
import * as lesson from '../../../stories/pulse-lesson.stories.js';
import * as practice from '../../../stories/pulse-practice.stories.js';
import * as reading from '../../../stories/pulse-reading.stories.js';
import * as simulated from '../../../stories/simulated-patient.stories.js';
import { walkStories } from '../tools/stories.js';

/** Those of the map, of languages and of the parts of an examination are walked in `stories`, `locale/stories` and `limb-parts/stories`. */
const ALL = {
  letter,
  note,
  observations,
  report,
  unconfirmed,
  visits,
  editor,
  lesson,
  practice,
  reading,
  simulated,
};

// Without an earlier record there are no changes, and nothing is drawn.
walkStories('changes', changes, {
  None: /^None$/,
  Worse: /before: reduced/,
  Better: /before: monophasic/,
  Same: /No change in what was examined both times/,
  Apart: /New red flag/,
});
for (const [area, module] of Object.entries(ALL)) walkStories(area, module);
