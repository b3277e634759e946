/*
 * Published sources of pressure criteria; every figure names one. Each is an export of its own, so that a bundle carries only the
 * tables it uses.
 */

export const aha2012 =
  'Aboyans V et al., Measurement and interpretation of the ankle-brachial index, Circulation 2012;126:2890-2909, doi:10.1161/CIR.0b013e318276fbcb';
export const guideline2016 =
  'Gerhard-Herman MD et al., 2016 AHA/ACC guideline on lower extremity PAD, Circulation 2017;135:e726-e779, doi:10.1161/CIR.0000000000000471';
export const guideline2024 =
  'Gornik HL et al., 2024 ACC/AHA multisociety guideline on lower extremity PAD, Circulation 2024;149:e1313-e1410, doi:10.1161/CIR.0000000000001251';
export const guideline2005 = 'Hirsch AT et al., ACC/AHA 2005 PAD guideline, Circulation 2006;113:e463-e654';
export const getAbi = 'Lange SF et al. (getABI), BMC Public Health 2007;7:147, doi:10.1186/1471-2458-7-147';
export const suominen2008 =
  'Suominen V et al., Eur J Vasc Endovasc Surg 2008;35:709-714, doi:10.1016/j.ejvs.2008.01.013';
export const parc2015 =
  'Patel MR et al. (PARC), J Am Coll Cardiol 2015;65:931-941, doi:10.1016/j.jacc.2014.12.036';
export const gvg2019 =
  'Conte MS et al., Global Vascular Guidelines on CLTI, J Vasc Surg 2019;69(6S):3S-125S, doi:10.1016/j.jvs.2019.02.016, table 1.1';
export const ghirardini2024 =
  'Ghirardini F, Martini R, Medicina 2024;60:1179, doi:10.3390/medicina60071179, table 2 (restating the guideline named)';
export const laboratory = 'Adduci A, vascular laboratory interpretation criteria (teaching page)';
export const laboratory2 = 'Zuni vascular laboratory protocol, upper extremity arterial pressures';
export const studyGuide = 'Vascular technology study guide, physiologic examinations';
export const clark2012 = 'Clark CE et al., Lancet 2012;379:905-914, doi:10.1016/S0140-6736(11)61710-8';
export const shadman2004 =
  'Shadman R et al., J Am Coll Cardiol 2004;44:618-623, doi:10.1016/j.jacc.2004.04.044';
export const memory = 'from memory';
export const practice = 'common practice, no source';
