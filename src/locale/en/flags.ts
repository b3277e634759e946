import { flagWordsFrom, type FlagTable } from '../flag-words.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { flagBar } from './flag-bar.js';
import { plainFlags } from './flags-plain.js';
import { groundWords } from './grounds.js';
import { decimal, list, range } from './phrases.js';

const trade: FlagTable = {
  missing: {
    onset: 'the onset',
    symptom: 'the symptom',
    severity: 'its severity',
    distance: 'the pain-free walking distance',
    exercise: 'ankle pressures after exercise',
    'same-artery': 'the same ankle artery at rest and after exercise',
    pressures: 'ankle or toe pressure',
    toe: 'the toe pressure',
    disease: 'proof of arterial disease by pulses, ABPI, toe pressure or waveform',
    sensation: 'sensation',
    movement: 'power',
    arterial: 'the arterial Doppler signals at foot or wrist',
    venous: 'the venous Doppler signal',
    ulcer: 'whether there is an ulcer',
    ulcerPlace: 'where the ulcer lies',
    ulcerCause: 'the cause of the ulcer',
    gangrene: 'whether there is gangrene',
    gangreneExtent: 'how far gangrene reaches',
    infection: 'local signs of infection',
    rednessCm: 'how far redness reaches',
    deepInfection: 'whether infection lies deeper than the skin',
    systemic: 'systemic inflammatory signs (SIRS)',
    wound: 'the wound',
    ischaemia: 'pressures',
  },
  questions: {
    onset: 'When did it begin, or when was the limb last known well? Sudden? Worse since?',
    movement: 'Can toes or fingers, ankle or wrist be moved against resistance?',
    sensation: 'Is light touch felt in toes or fingers, and above?',
    'arterial-doppler': 'Arterial Doppler signal at both end arteries?',
    'venous-doppler': 'Venous Doppler signal?',
    'other-pulses': 'Proximal pulses, and the other limb?',
    'passive-stretch': 'Muscle tender or tense? Pain on passive stretch?',
    background: 'Rhythm, known aneurysm, graft or stent, anticoagulant stopped?',
    'distal-pulses': 'Pulses distal to the injury?',
    'ankle-index': 'ABPI?',
    'forearm-index': 'Forearm pressure over the brachial pressure of the other arm?',
    'other-side-index': 'The index of the other side, for comparison?',
    'abdominal-or-back-pain': 'New abdominal, back or loin pain, or collapse?',
    'chest-or-back-pain': 'Sudden chest or back pain?',
    'other-popliteal-and-aorta': 'The other popliteal pulse, and the aorta?',
    'pad-tests': 'Pulses, ABPI, toe pressure: is arterial disease there?',
    toe: 'Toe pressure?',
    diabetes: 'Diabetes?',
    'old-deficit': 'Is the deficit old and unchanged?',
    'marks-unrecorded': 'Drawn on the skin: record it in Inspection?',
  },
  urgencies: { now: 'Now', today: 'Today', soon: 'Within days' },
  workingDays: (days) => `Within ${days} working ${days === 1 ? 'day' : 'days'}`,
  target: (inHospital, atHome) =>
    `Usual target from referral to revascularisation: ${inHospital} days in hospital, ${atHome} days at home.`,
  names: {
    circulation: 'Several limbs without perfusion: shock or cardiac arrest?',
    'aneurysm-symptomatic': 'Possible symptomatic or ruptured aortic aneurysm',
    dissection: 'Possible aortic dissection',
    'stroke-now': 'Possible stroke',
    'access-bleeding': 'Bleeding dialysis access, or at risk of bleeding',
    'arterial-injury': 'Possible arterial injury',
    'aortic-occlusion': 'Possible acute aortic occlusion (both legs)',
    'aneurysm-with-acute-limb': 'Aortic aneurysm with an acutely ischaemic leg',
    'popliteal-aneurysm-acute': 'Possible thrombosed popliteal aneurysm with acute limb ischaemia',
    'acute-limb-irreversible': 'Acute limb ischaemia likely, may be irreversible',
    'acute-limb-threatened': 'Acute limb ischaemia likely, limb may be threatened',
    'acute-limb': 'Possible acute limb ischaemia (ALI)',
    'graft-occlusion': 'Possible graft or stent occlusion',
    'iatrogenic-hand': 'Hand ischaemia after an arterial line or catheter',
    'fixed-mottling': 'Fixed (non-blanching) mottling',
    'compartment-syndrome': 'Possible compartment syndrome',
    'arterial-injury-possible': 'Arterial injury not excluded',
    phlegmasia: 'Possible phlegmasia (venous limb ischaemia)',
    'graft-infection': 'Possible graft infection',
    'false-aneurysm': 'Possible false aneurysm',
    'access-steal': 'Possible access steal or monomelic neuropathy',
    'cold-injury': 'Cold injury (frostbite)',
    'wet-gangrene': 'Wet gangrene',
    'spreading-infection': 'Possible sepsis, infection with systemic inflammatory signs (SIRS)',
    'diabetic-foot-emergency': 'Limb-threatening diabetic foot problem',
    'threatened-hand': 'Critical digital ischaemia',
    'neuro-deficit': 'Motor or sensory deficit',
    'acute-limb-possible': 'Acute limb ischaemia (ALI) not excluded',
    'no-doppler': 'No arterial Doppler signal at the foot or wrist',
    'perfusion-poor': 'Severely reduced perfusion, chronic',
    'aneurysm-possible': 'Possible aneurysm',
    'popliteal-aneurysm-possible': 'Possible popliteal aneurysm',
    'access-thrombosed': 'Possible thrombosis of the dialysis access',
    'digital-ischaemia': 'Possible embolism to the digits',
    'deep-infection': 'Deep or spreading soft-tissue infection',
    'diabetic-foot-active': 'Active diabetic foot problem',
    tia: 'Possible transient ischaemic attack (TIA)',
    'chronic-limb-threat': 'Possible chronic limb-threatening ischaemia (CLTI)',
    'foot-ulcer-unproven': 'Ulcer, arterial disease not tested',
    'ulnar-artery-hand': 'Possible ulnar artery occlusion (hypothenar hammer syndrome)',
    'threatening-pressure': 'Perfusion pressure in the limb-threat range',
  },
  actions: {
    circulation:
      'Call the emergency team now, by your local pathway: assess the circulation before localising an occlusion.',
    'aneurysm-symptomatic':
      'Rupture until shown otherwise: call the emergency and vascular team now, by your local aneurysm pathway.',
    dissection: 'Call the emergency team; urgent imaging and specialist review by your local aortic pathway.',
    'stroke-now': 'Call now, by your local stroke pathway.',
    'access-bleeding': 'Call the emergency and vascular access team now, by your local pathway.',
    'arterial-injury': 'Call the trauma and vascular team, by your local trauma pathway.',
    'aortic-occlusion':
      'Call the vascular team now, by your local acute limb ischaemia pathway. Do not take it for a spinal problem.',
    'acute-limb': 'Call the vascular team now; follow your local acute limb ischaemia pathway.',
    'graft-occlusion': 'Call or refer to the vascular team in that time, by your local pathway.',
    'iatrogenic-hand': 'Call the vascular team and the team that placed the line, by your local pathway.',
    'compartment-syndrome':
      'Call the orthopaedic or surgical team and release constricting dressings or casts, by your local pathway. Pulses are usually present: do not wait for them to go.',
    'arterial-injury-possible':
      'Measure the index and examine again; trauma team by your local trauma pathway.',
    phlegmasia: 'Call the vascular team, by your local venous thrombosis pathway.',
    'graft-infection': 'Call the vascular team, by your local pathway.',
    'false-aneurysm': 'Imaging and vascular team, by your local pathway.',
    'access-steal': 'Call the vascular access team, by your local pathway.',
    'cold-injury': 'Emergency team, by your local cold-injury pathway.',
    'wet-gangrene': 'Call the surgical or vascular team now, by your local pathway.',
    'spreading-infection': 'Treat as an emergency now, by your local sepsis pathway.',
    'diabetic-foot-emergency':
      'Refer immediately to acute services and tell the multidisciplinary foot service, by your local pathway.',
    'threatened-hand': 'Call the vascular or rheumatology team, by your local pathway.',
    'neuro-deficit':
      'Establish the onset now; stroke, spinal or vascular pathway by what is found. If new, treat the limb as possibly ischaemic.',
    'acute-limb-possible':
      'Establish the onset now. If it began within 2 weeks, however gradually, treat as possible acute limb ischaemia by your local pathway.',
    'no-doppler': 'Establish whether it is new; vascular team by your local pathway.',
    'perfusion-poor': 'Vascular referral, by your local pathway.',
    'aneurysm-possible':
      'Arrange imaging and vascular review by your local aneurysm pathway; call now if there is abdominal, back or limb pain, collapse, or acute ischaemia.',
    'popliteal-aneurysm-possible':
      'Arrange imaging by your local aneurysm pathway; call now if the leg becomes acutely ischaemic.',
    'digital-ischaemia':
      'Vascular team, by your local pathway: look for the source (aorta, popliteal artery, heart).',
    'deep-infection':
      'Same-day assessment by your local surgical pathway; refer immediately if limb or life is at risk.',
    'diabetic-foot-active': 'Refer to the diabetic foot service in that time, by your local pathway.',
    tia: 'Same-day assessment, by your local pathway for transient ischaemic attacks.',
    'chronic-limb-threat': 'Urgent vascular referral, by your local pathway.',
    'foot-ulcer-unproven':
      'Measure ABPI and toe pressure and refer to a foot or vascular clinic, by your local pathway.',
    'ulnar-artery-hand': 'Refer to a vascular or hand clinic, by your local pathway.',
  },
  stillMissing: (what) => `Not yet recorded: ${what}.`,
  classIs: (rutherford) => `Acute class: ${rutherford}.`,
  classOpen: (rutherford) => `Acute class not settled: ${rutherford}.`,
  window: (from, to) =>
    `Guideline window for revascularisation: within ${from ? `${from} to ` : ''}${to} hours. The call is immediate.`,
  since: (hours) => `${hours} h from onset to examination.`,
  abbreviations: {
    ankleIndex: { short: 'ABPI', long: 'ankle-brachial pressure index (ABPI)' },
    toeIndex: { short: 'TBPI', long: 'toe-brachial pressure index (TBPI)' },
    oxygen: { short: 'TcPO₂', long: 'transcutaneous oxygen pressure (TcPO₂)' },
  },
  title: 'Red flags',
  unread: 'This record cannot be read here. It has not been checked for red flags.',
  unchecked: (count) =>
    count === 1
      ? '1 entry of a later version has not been checked for red flags.'
      : `${count} entries of a later version have not been checked for red flags.`,
  sources: 'Sources',
  cite: (source) => source,
  caution:
    'Raised by the recorded findings; not a diagnosis. Your local pathway and a licensed clinician decide what happens next.',
};

export const flags = flagWordsFrom(inRegisters(trade, plainFlags), flagBar, {
  anatomy,
  groundWords,
  list,
  range,
  decimal,
});
