import type { SiteId } from '../../anatomy/index.js';
import { termsFrom } from '../terms.js';

/** Where to put the finger or the stethoscope, and how: common practice, own words. */
// prettier-ignore
export const techniques = termsFrom<SiteId>({
  'superficial-temporal': { trade: 'Unmittelbar vor dem Tragus, über dem Jochbogen; leicht tasten.', plain: 'Vor dem Ohr, knapp über dem Jochbein. Nur leicht drücken.' },
  carotid: { trade: 'Zwischen Trachea und M. sternocleidomastoideus, in Höhe des Ringknorpels oder darunter. Erst auskultieren, dann sanft tasten, nie beide Seiten zugleich, nie am Oberrand des Schildknorpels (Karotissinus); nach kürzlicher transitorischer ischämischer Attacke nur nach örtlicher Regel.', plain: 'Neben der Luftröhre, tief am Hals. Sanft drücken und nie auf beiden Seiten zugleich.' },
  subclavian: { trade: 'Fossa supraclavicularis, hinter der Klavikulamitte und lateral des M. sternocleidomastoideus; nach kaudal gegen die 1. Rippe drücken. Dort auch auskultieren; ein Geräusch kann auch vom Abgang der Vertebralis stammen.', plain: 'Knapp über der Mitte des Schlüsselbeins, nach unten gegen die 1. Rippe drücken.' },
  axillary: { trade: 'Hoch in der Axilla an der lateralen Wand, Arm leicht abduziert; gegen den Humerus drücken.', plain: 'Hoch in der Achselhöhle, nach außen gegen den Oberarm drücken.' },
  brachial: { trade: 'Ellenbeuge, unmittelbar medial der Bizepssehne, Ellenbogen fast gestreckt.', plain: 'In der Ellenbeuge, auf der Innenseite der Sehne.' },
  radial: { trade: 'Am Handgelenk, lateral der Sehne des M. flexor carpi radialis, gegen den distalen Radius. Beide Seiten gleichzeitig vergleichen.', plain: 'Am Handgelenk auf der Daumenseite.' },
  ulnar: { trade: 'Am Handgelenk, unmittelbar lateral (daumenwärts) der Sehne des M. flexor carpi ulnaris, proximal des Os pisiforme.', plain: 'Am Handgelenk auf der Kleinfingerseite, gleich daumenwärts der Sehne.' },
  'abdominal-aorta': { trade: 'Epigastrium, oberhalb des Nabels, etwas links der Mittellinie, Bauchdecke entspannt; tief mit beiden Händen, je eine auf jeder Seite, um Breite und expansive Pulsation zu beurteilen. Bei Verdacht auf ein Aneurysma nicht fest drücken.', plain: 'Über dem Nabel, etwas links, mit beiden Händen tief drücken.' },
  renal: { trade: 'Auskultation etwa 5 cm oberhalb des Nabels, 3 bis 5 cm neben der Mittellinie.', plain: 'Stethoskop etwa 5 cm über dem Nabel, 3 bis 5 cm neben der Mitte.' },
  iliac: { trade: 'Auskultation auf halbem Weg zwischen Nabel und Mitte zwischen Spina iliaca anterior superior und Symphyse.', plain: 'Stethoskop auf halbem Weg zwischen Nabel und Leistenmitte.' },
  femoral: { trade: 'Knapp unterhalb des Leistenbandes, in der Mitte zwischen Spina iliaca anterior superior (SIAS) und Symphyse.', plain: 'In der Leistenbeuge, auf halbem Weg zwischen vorderem Beckenknochen und Schambein.' },
  'adductor-canal': { trade: 'Auskultation über dem Adduktorenkanal: mediale Oberschenkelseite, etwa eine Handbreit oberhalb des Tuberculum adductorium.', plain: 'Stethoskop innen am Oberschenkel, eine Handbreit über dem Knie.' },
  popliteal: { trade: 'Knie entspannt, etwa 30° gebeugt; Daumen auf der Tuberositas tibiae, die Fingerkuppen beider Hände in der Mittellinie der unteren Hälfte der Kniekehle, Arterie gegen die Tibiahinterkante drücken. Ist der Puls auffallend leicht zu tasten, an ein Poplitealaneurysma denken.', plain: 'Knie locker, etwa 30° gebeugt; in der Mitte der Kniekehle, untere Hälfte, tief drücken.' },
  'posterior-tibial': { trade: 'Etwa 2 cm unterhalb und hinter dem Malleolus medialis, ein Drittel des Wegs zur Ferse; Fuß entspannt.', plain: 'Etwa 2 cm hinter und unter dem Innenknöchel.' },
  'dorsalis-pedis': { trade: 'Fußrücken, unmittelbar lateral der Sehne des M. extensor hallucis longus (EHL), über dem proximalen ersten Intermetatarsalraum; leicht tasten.', plain: 'Auf dem Fußrücken, gleich außen neben der Großzehensehne. Leicht drücken.' },
});
