/** Published sources of stages and classes. */
export const STAGING_SOURCES = {
  fontaine1954:
    'Fontaine R, Kim M, Kieny R, Helv Chir Acta 1954;21:499-533; distances by European convention',
  rutherford1997: 'Rutherford RB et al., J Vasc Surg 1997;26:517-538, doi:10.1016/S0741-5214(97)70045-4',
  tasc2:
    'Norgren L et al., TASC II, J Vasc Surg 2007;45(Suppl S):S5-S67, doi:10.1016/j.jvs.2006.12.037 (from memory)',
  gvg2019:
    'Conte MS et al., Global Vascular Guidelines on CLTI, J Vasc Surg 2019;69(6S):3S-125S, doi:10.1016/j.jvs.2019.02.016, table 1.1',
  mills2014: 'Mills JL Sr et al., J Vasc Surg 2014;59:220-234, doi:10.1016/j.jvs.2013.08.003',
} as const;
