/** Where the figures of the network come from, by the short names the tables use. */
export const SOURCES = {
  haltmayer:
    'Haltmayer M et al., Int Angiol 2001;20:200-207: 132 relevant lesions of 106 symptomatic patients, aorto-iliac 17.4%, femoro-popliteal 62.1%, crural 20.5%',
  isolated:
    'Segmental peripheral atherosclerosis and risk factors, 132 patients: aorto-iliac only 12.9%, femoro-popliteal only 34.1%, crural only 18.9%, several 34.1%',
  graziani:
    'Graziani L et al., Eur J Vasc Endovasc Surg 2007;33:453-460: 74% of lesions in diabetic feet below the knee',
  clti: 'J Vasc Bras 2023;22, 476 patients: odds ratio smoking to aorto-iliac 3.6 (1.54-8.3), diabetes to infrapopliteal 1.8 (1.04-3.19)',
  consult:
    '5-Minute Clinical Consult, arterial embolism: femoral 28, aorto-iliac 18, popliteal 17, brachial 10 of 73 limb emboli',
  landry:
    'Landry GJ et al., Vascular Annual Meeting 2013: 56 arm emboli, 35 of them right; both legs in 18 of 104',
  subclavianSide: 'StatPearls, Subclavian artery thrombosis: left four times as often as right',
  upperLimb: 'Ibrahim T, Klinische Angiologie 2023: the arm has 10% of peripheral occlusive disease',
  takayasu:
    'Kerr GS et al., Ann Intern Med 1994;120:919-929 (from memory): subclavian 93%, aorta 65%, common carotid 58%, renal 38%',
  giantCell:
    'Kermani TA et al., Semin Arthritis Rheum 2018;48:707-713: subclavian 42%, axillary 32%, thoracic aorta 20%',
  buerger:
    'Barlas S et al., Int J Angiol 1997;6:49-55: arteries below knee and elbow, arms in 47.5%, young smokers',
  simel:
    'Simel DL, JAMAevidence: arterial disease in 15% at 60 and over with leg discomfort, 5% at 60 and 12% at 70 without',
  robertson:
    'Robertson GS et al., Ann R Coll Surg Engl 1990;72:99-100: dorsalis pedis missing in 24 of 1094 young limbs, posterior tibial in one of 547 people',
  armstrong:
    'Armstrong D et al., Canadian Cardiovascular Congress 2013: with normal indices dorsalis pedis absent in 14.7% and 16.1% of right and left feet, posterior tibial 8.7% and 9.0%, both 2.5%',
  brearley:
    'Brearley S et al., Ann R Coll Surg Engl 1992;74:169-171: femoral felt in 95% or more, a pulse reported where there is none in up to 20%',
  criqui:
    'Criqui MH et al., Circulation 1985;71:516-522 (from memory): abnormal posterior tibial sensitivity 0.71, specificity 0.91',
  mcgeeBoyko:
    'McGee SR, Boyko EJ, Arch Intern Med 1998;158:1357-1364: abnormal femoral for aorto-iliac disease 0.38 / 1.00; limb bruit for stenosis 0.80 / 0.75; limb bruit for arterial disease 0.20-0.50 / 0.92-0.99',
  khan: 'Khan NA et al., JAMA 2006;295:536-546: any bruit 5.6 (4.7-6.7), no bruit 0.39, any pulse abnormal 4.7 (2.2-9.9), claudication 3.3 (2.3-4.8)',
  mccolgan: 'McColgan P et al., QJM 2012;105:1171-1177: carotid bruit sensitivity 0.53, specificity 0.83',
  hirsch:
    'Hirsch AT et al., 2005 ACC/AHA guideline (from memory): claudication of buttock, thigh, calf and foot and its level',
  aha: 'Aboyans V et al., Circulation 2012;126:2890-2909: ankle index 0.90 or less abnormal',
  suominen:
    'Suominen V et al., Eur J Vasc Endovasc Surg 2008;35:709-714: ankle index above 1.4 sensitivity 0.38, specificity 0.94 for arterial disease',
  tbi: 'Tehan P et al., J Ultrasound Med 2015;34:1737-1743: toe index sensitivity 0.71, specificity 0.78; normal above 0.7',
  clark:
    'Clark CE et al., Lancet 2012;379:905-914: 36.9 mmHg mean difference of the arms with a proven subclavian stenosis',
  trauma: 'civilian extremity arterial injuries, shares from memory',
  memory: 'from memory, no source read',
  practice: 'common practice, no source',
  judgement: 'judgement, no source',
  fitted: 'judgement, fitted on the published cases',
} as const;
export type SourceId = keyof typeof SOURCES;
