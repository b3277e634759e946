import { limbKey } from '../anatomy/index.js';
import { type CalledTeam, type Examination, setFields, type TeamCall } from '../examination/index.js';
import type { RedFlag, Team } from './flag.js';

/** The team that answers each call of a flag. Common practice, no source; who it is there, the local pathway says. */
export const CALLED: Readonly<Record<Team, CalledTeam>> = {
  vascular: 'vascular',
  'vascular-if-new': 'vascular',
  'vascular-referral': 'vascular',
  'vascular-urgent': 'vascular',
  emergency: 'emergency',
  'emergency-and-vascular': 'emergency',
  'emergency-aortic': 'aortic',
  trauma: 'trauma',
  'trauma-and-vascular': 'trauma',
  compartment: 'surgery',
  neurology: 'neurology',
  'aneurysm-imaging': 'vascular',
  'line-team': 'vascular',
  access: 'access',
  'access-bleeding': 'access',
  'cold-injury': 'emergency',
  'hand-vascular': 'hand',
  'hand-clinic': 'hand',
  'surgical-or-vascular': 'surgery',
  surgical: 'surgery',
  sepsis: 'emergency',
  'foot-clinic': 'foot',
  'foot-emergency': 'foot',
  'foot-service': 'foot',
  tia: 'stroke',
  stroke: 'stroke',
};

type Called = Pick<RedFlag, 'whom' | 'limb'>;

/** Calls of the team of a flag about its limb, in the order they were recorded. They say what was done and weigh nothing. */
export function callsFor({ calls = [] }: Examination, { whom, limb }: Called): readonly TeamCall[] {
  const about = limb && limbKey(limb);
  return calls.filter((call) => call.team === CALLED[whom] && call.limb === about);
}

/**
 * Records that the team of a flag was called.
 * @param at ISO 8601 with `Z` or an offset
 * @param name who answered, where the pathway says
 * @throws RangeError for a time that is none, and beyond `MOST_CALLS`
 */
export function recordCall(
  examination: Examination,
  { whom, limb }: Called,
  at: string,
  name?: string,
): Examination {
  const call: TeamCall = {
    team: CALLED[whom],
    at,
    ...(limb && { limb: limbKey(limb) as TeamCall['limb'] & string }),
    ...(name && { whom: name }),
  };
  return setFields(examination, { calls: [...(examination.calls ?? []), call] });
}

/** The record with another time of a call, or without the call where there is no time. A call it does not hold changes nothing. */
export function changeCall(examination: Examination, call: TeamCall, at: string | undefined): Examination {
  const all = examination.calls ?? [];
  const i = all.indexOf(call);
  if (i < 0) return examination;
  const next = at === undefined ? all.toSpliced(i, 1) : all.with(i, { ...call, at });
  return setFields(examination, { calls: next.length ? next : undefined });
}
