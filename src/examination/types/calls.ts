/** Who may have been called, as a hospital names its teams. */
export const CALLED_TEAMS = [
  'vascular',
  'emergency',
  'aortic',
  'trauma',
  'surgery',
  'access',
  'hand',
  'foot',
  'neurology',
  'stroke',
] as const;
export type CalledTeam = (typeof CALLED_TEAMS)[number];

/** The limbs that a call may be about. */
export const CALLED_LIMBS = ['right leg', 'left leg', 'right arm', 'left arm'] as const;

/** Most calls kept in one record. */
export const MOST_CALLS = 50;

/** That a team was called, and when. */
export interface TeamCall {
  readonly team: CalledTeam;
  /** Clock time of the call; ISO 8601 with `Z` or an offset. */
  readonly at: string;
  /** The limb it was about, by the patient's side; missing where it was about none. */
  readonly limb?: (typeof CALLED_LIMBS)[number];
  /** Who answered, in the examiner's words or by the name in the pathway. */
  readonly whom?: string;
}
