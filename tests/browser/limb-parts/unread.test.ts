import { setViewport } from '../../tools/real-input.js';
import { keepsWhatItCannotRead } from '../tools/unread-contract.js';
import 'pulse-map/elements/bedside-test/define';
import 'pulse-map/elements/limb-context/define';
import 'pulse-map/elements/limb-history/define';
import 'pulse-map/elements/limb-inspection/define';
import 'pulse-map/elements/limb-pressures/define';
import 'pulse-map/elements/limb-staging/define';

before(() => setViewport({ width: 900, height: 900 }));

/** Each part with a value it shows, and one of a wrong type in a field it knows. */
const PARTS: readonly (readonly [tag: string, readable: string, wrong: string, attributes?: string])[] = [
  ['limb-context', '{"diabetes":true}', '{ "diabetes": 7 }'],
  ['limb-history', '{"onset":"acute"}', '{ "onset": [] }'],
  ['limb-inspection', '{"leg":{"left":{"refill":3}}}', '{ "leg": { "left": 3 } }'],
  ['limb-pressures', '{"toe":{"left":44}}', '{ "toe": 44 }'],
  ['limb-staging', '{"leg":{"left":{"fontaine":{"stage":"IV"}}}}', '{ "leg": "IV" }'],
  ['bedside-test', '{"left":{"seconds":12,"limit":20}}', '{ "left": 12 }', 'test="venous-filling"'],
];

for (const [tag, readable, wrong, attributes = ''] of PARTS)
  keepsWhatItCannotRead({ tag, attributes, readable, unreadable: [wrong, '[1, 2]', '7'] });
