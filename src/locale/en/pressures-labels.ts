/** Labels of the controls. */
export const pressuresLabels = {
  title: 'Pressures',
  how: 'Systolic pressures, supine, rested 5 to 10 minutes.',
  unit: 'Unit',
  tcpo2: 'Transcutaneous oxygen pressure (TcPO₂), foot',
  measured: 'Measured',
  legs: 'Ankle and toe',
  segments: 'Segmental pressures',
  arms: 'Wrist and finger',
  afterExercise: 'After exercise',
  completed: 'Whole walk done',
  yes: 'Yes',
  no: 'No',
  minutes: 'Minutes walked',
  stoppedBy: 'What ended it',
  used: 'Figures used are underlined.',
  noArm: 'No ankle-brachial pressure index (ABPI) without a brachial pressure.',
  plot: 'Pressure from arm to toe, right and left',
  refusedArms:
    'Both arms at 0: nothing could be divided by them. Expected a pressure above 0 in at least one arm.',
  volumeCurve: 'Volume curve at the ankle',
  methods: 'Method and limits',
  /** Before the first cuff. */
  cuffs:
    'No cuff over an arteriovenous fistula or access graft, a lymphoedema or node-clearance arm, or a leg with suspected deep vein thrombosis. Over a bypass or stent, or beyond a distal bypass, ask your local rule first; near an ulcer, burn, fracture or great pain, cuff elsewhere or measure the toe. Never delay the call for an acutely ischaemic limb for a pressure.',
  technique:
    'Supine, rested 5 to 10 minutes, heels supported, room 19 to 22 °C, no smoking for 2 hours; cuff width at least 40% of the circumference; Doppler probe 8 to 10 MHz. Order: right arm, right posterior tibial, right dorsalis pedis, left posterior tibial, left dorsalis pedis, left arm; repeat the first arm.',
  caution:
    'Medial calcification (diabetes, chronic kidney disease, age) gives falsely high ankle pressures: a normal ankle-brachial pressure index (ABPI) does not exclude peripheral arterial disease.',
};
export type PressureLabels = typeof pressuresLabels;
