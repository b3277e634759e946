/** American spelling and terms, each with the British form it stands for; whole terms come before parts of words. */
const PAIRS: readonly (readonly [british: RegExp, american: string])[] = [
  [/brachial pressure index/g, 'brachial index'],
  [/\bABPI\b/g, 'ABI'],
  [/\bTBPI\b/g, 'TBI'],
  [/eripheral arterial disease/g, 'eripheral artery disease'],
  [/\b(Adson|Allen|Buerger|Eden|Raynaud|Wright)’s\b/g, '$1'],
  [/\bI(?=ncompressible)/g, 'Noni'],
  [/\bi(?=ncompressible)/g, 'noni'],
  [/\b([Nn]on)incompressible/g, '$1compressible'],
  [/\boedema|(?<=[Ll]ymph)oedema/g, 'edema'],
  [/\bOedema/g, 'Edema'],
  [/([Aa])orto-iliac/g, '$1ortoiliac'],
  [/([Ff])emoro-popliteal/g, '$1emoropopliteal'],
  [/([Aa])xillo-/g, '$1xillo'],
  [/run-off/g, 'runoff'],
  [/\bischaemic heart disease/g, 'coronary artery disease'],
  [/\bthrombophilia/g, 'hypercoagulable state'],
  [/\bThrombophilia/g, 'Hypercoagulable state'],
  [/schaem/g, 'schem'],
  [/([Hh])aem/g, '$1em'],
  [/aemia/g, 'emia'],
  [/([Pp])araesth/g, '$1aresth'],
  [/([Aa])naesth/g, '$1nesth'],
  [/([Oo])rthopaed/g, '$1rthoped'],
  [/([Mm])anoeuvre/g, '$1aneuver'],
  [/([Cc])olour/g, '$1olor'],
  [/([Ff])avour/g, '$1avor'],
  [/([Jj])udgement/g, '$1udgment'],
  [/ularis(?=e|ation|ing)/g, 'ulariz'],
  [/ocalis(?=e|ation|ing)/g, 'ocaliz'],
  [/([Mm])etre/g, '$1eter'],
  [/([Cc])ut-off/g, '$1utoff'],
];

/** A text of the library in American English; never for what a person typed. */
export function american(text: string): string {
  return PAIRS.reduce((now, [british, us]) => now.replace(british, us), text);
}
