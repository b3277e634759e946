import { comparisonFrom, type ComparisonTable } from '../comparison.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { examination } from './examination.js';
import { flags } from './flags.js';
import { decimal, list } from './phrases.js';
import { staging } from './staging.js';

const stellen = (anzahl: number): string => (anzahl === 1 ? '1 Stelle' : `${anzahl} Stellen`);

const fachlich: ComparisonTable = {
  title: 'Änderungen seit der früheren Untersuchung',
  since: (when) => `Änderungen seit dem ${when}`,
  weights: {
    urgent: 'Dringend',
    matters: 'Verändert',
    minor: 'Weitere Unterschiede',
    chance: 'Vielleicht Zufall',
  },
  scatter: 'So weit weichen auch zwei Untersucher oder zwei Messungen voneinander ab.',
  was: (what, now, before) => `${what}: ${now}; vorher: ${before}`,
  pulse: (place) => `${place}, Puls`,
  doppler: (place) => `${place}, Dopplersignal`,
  bruit: (place) => `${place}, Auskultation`,
  graft: (artery) => `Bypass oder Stent, ${artery}`,
  graftPulses: { present: 'Puls tastbar', absent: 'kein Puls' },
  index: 'Knöchel-Arm-Index (ABI)',
  toe: (limb) => `${limb}, Zehendruck`,
  distance: (limb) => `${limb}, schmerzfreie Gehstrecke`,
  metres: (count) => `${count} m`,
  verdicts: {
    normal: 'unauffällig',
    borderline: 'grenzwertig',
    abnormal: 'auffällig',
    severe: 'stark auffällig',
  },
  flags: {
    raised: (heading) => `neues Warnzeichen: ${heading}`,
    worsened: (heading) => `Warnzeichen dringender als zuvor: ${heading}`,
    eased: (heading) => `Warnzeichen weniger dringend als zuvor: ${heading}`,
    gone: (heading) => `durch die jetzigen Befunde nicht ausgelöst: ${heading}`,
  },
  notNow: (places) => `Früher bekannt, diesmal nicht untersucht: ${places}.`,
  notBefore: (count) => `${stellen(count)} erstmals untersucht.`,
  same: (count) => `${stellen(count)} wie zuvor.`,
  nothing: 'Keine Änderung bei dem, was beide Male untersucht wurde.',
  unread: 'Diese Version kann den früheren Befund nicht lesen; verglichen wird daher nichts.',
};

const einfach: Otherwise<ComparisonTable> = {
  title: 'Was sich seit dem früheren Besuch verändert hat',
  since: (when) => `Was sich seit dem ${when} verändert hat`,
  scatter: 'Solche Unterschiede kommen vor, auch wenn sich nichts verändert hat.',
  doppler: (place) => `${place}, Strömungsgeräusch`,
  bruit: (place) => `${place}, Abhören`,
  index: 'Knöchel im Vergleich zum Arm',
  toe: (limb) => `${limb}, Blutdruck an der Zehe`,
  distance: (limb) => `${limb}, Gehen ohne Schmerzen`,
  verdicts: {
    normal: 'in Ordnung',
    borderline: 'gerade noch in Ordnung',
    abnormal: 'nicht in Ordnung',
    severe: 'stark gestört',
  },
  flags: {
    raised: (heading) => `neues Warnzeichen: ${heading}`,
    worsened: (heading) => `Warnzeichen eiliger als zuvor: ${heading}`,
    eased: (heading) => `Warnzeichen weniger eilig als zuvor: ${heading}`,
    gone: (heading) => `diesmal nicht zu sehen: ${heading}`,
  },
  notNow: (places) => `Früher bekannt, diesmal nicht geprüft: ${places}.`,
  notBefore: (count) => `${stellen(count)} zum ersten Mal geprüft.`,
  nothing: 'Keine Änderung bei dem, was beide Male geprüft wurde.',
};

export const comparison = comparisonFrom(inRegisters(fachlich, einfach), {
  anatomy,
  bedside,
  examination,
  flags,
  staging,
  decimal,
  list,
});
