import { comparisonFrom, type ComparisonTable } from '../comparison.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { examination } from './examination.js';
import { flags } from './flags.js';
import { decimal, list } from './phrases.js';
import { staging } from './staging.js';

const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;

const trade: ComparisonTable = {
  title: 'Changes since the earlier visit',
  since: (when) => `Changes since ${when}`,
  weights: { urgent: 'Urgent', matters: 'Changed', minor: 'Other differences', chance: 'May be chance' },
  scatter: 'Two examiners, or two measurements of one, differ by as much.',
  was: (what, now, before) => `${what}: ${now}; before: ${before}`,
  pulse: (place) => `${place} pulse`,
  doppler: (place) => `${place}, Doppler signal`,
  bruit: (place) => `${place}, auscultation`,
  graft: (artery) => `graft or stent, ${artery}`,
  graftPulses: { present: 'pulse felt', absent: 'no pulse' },
  index: 'ankle-brachial pressure index (ABPI)',
  toe: (limb) => `${limb}, toe pressure`,
  distance: (limb) => `${limb}, pain-free walking distance`,
  metres: (count) => `${count} m`,
  verdicts: { normal: 'normal', borderline: 'borderline', abnormal: 'abnormal', severe: 'severely abnormal' },
  flags: {
    raised: (heading) => `new red flag: ${heading}`,
    worsened: (heading) => `red flag more urgent than before: ${heading}`,
    eased: (heading) => `red flag less urgent than before: ${heading}`,
    gone: (heading) => `not raised by what was found this time: ${heading}`,
  },
  notNow: (places) => `Known before and not examined this time: ${places}.`,
  notBefore: (count) => `${counted(count, 'site', 'sites')} examined for the first time.`,
  same: (count) => `${counted(count, 'site', 'sites')} as before.`,
  nothing: 'No change in what was examined both times.',
  unread: 'The earlier record cannot be read by this version, so nothing is compared.',
};

const plain: Otherwise<ComparisonTable> = {
  title: 'What has changed since the earlier visit',
  since: (when) => `What has changed since ${when}`,
  weights: { urgent: 'Urgent', matters: 'Changed', minor: 'Other differences', chance: 'May be chance' },
  scatter: 'Differences of this size come up even when nothing has changed.',
  pulse: (place) => `pulse, ${place}`,
  doppler: (place) => `${place}, flow sound`,
  bruit: (place) => `${place}, listening`,
  graft: (artery) => `bypass or stent, ${artery}`,
  index: 'ankle compared with arm',
  toe: (limb) => `${limb}, blood pressure at the toe`,
  distance: (limb) => `${limb}, distance walked without pain`,
  verdicts: {
    normal: 'normal',
    borderline: 'just at the limit',
    abnormal: 'not normal',
    severe: 'far from normal',
  },
  flags: {
    raised: (heading) => `new warning sign: ${heading}`,
    worsened: (heading) => `warning sign more urgent than before: ${heading}`,
    eased: (heading) => `warning sign less urgent than before: ${heading}`,
    gone: (heading) => `not shown by what was found this time: ${heading}`,
  },
  notBefore: (count) => `${counted(count, 'place', 'places')} checked for the first time.`,
  same: (count) => `${counted(count, 'place', 'places')} as before.`,
  notNow: (places) => `Known before and not checked this time: ${places}.`,
  nothing: 'No change in what was checked both times.',
};

export const comparison = comparisonFrom(inRegisters(trade, plain), {
  anatomy,
  bedside,
  examination,
  flags,
  staging,
  decimal,
  list,
});
