import type { SeatId } from '../ids.ts';

/**
 * What a cue makes of the evening's call, a line of the table of cues. `open`: everybody as they like. `hush`: guests are
 * silent. `card`: silent too, and the phone is a white card to hold the glass against. `eyes-closed`: silent and dark.
 * `turns`: a talk. `rest`: everything is off until one wants it.
 */
export const callScenes = ['open', 'hush', 'card', 'eyes-closed', 'turns', 'rest'] as const;
export type CallScene = (typeof callScenes)[number];

/** `room`: the camera at the table; `screen`: a television, which shows and plays and sends nothing. */
export const callRoles = ['host', 'guest', 'room', 'screen'] as const;
export type CallRole = (typeof callRoles)[number];

/** What the owner of a device has said with a tap, on that device and for tonight. */
export interface CallWishes {
  readonly microphone: boolean;
  readonly camera: boolean;
  /** At one's own turn the microphone opens by itself. */
  readonly atMyTurn: boolean;
}

export const noWishes: CallWishes = { microphone: false, camera: false, atMyTurn: false };

export interface CallMoment {
  readonly scene: CallScene;
  readonly role: CallRole;
  readonly wishes: CallWishes;
  /** It is this seat's turn to speak. */
  readonly myTurn: boolean;
  /** This guest has called for the host. */
  readonly handRaised: boolean;
  /** The button that speaks is held down. */
  readonly pressed: boolean;
}

/** What of a device may be open now. */
export interface CallGates {
  /** Whom its sound is sent to. */
  readonly microphone: 'nobody' | 'host' | 'all';
  readonly camera: boolean;
  /** What a tap may open now; closing is always allowed. */
  readonly mayOpen: { readonly microphone: boolean; readonly camera: boolean };
  /** [V5] The button that speaks to the host alone. */
  readonly mayPress: boolean;
  /** What it shows of others. `voice`: no picture, one hears; `dark`: as `voice`, and no light either. */
  readonly pictures: 'shown' | 'voice' | 'dark';
}

/** [V1] Whether guests are silent. */
export const isSilent = (scene: CallScene): boolean =>
  scene === 'hush' || scene === 'card' || scene === 'eyes-closed';

export function callGates({ scene, role, wishes, myTurn, handRaised, pressed }: CallMoment): CallGates {
  const silenced = isSilent(scene) && role !== 'host';
  const mayPress = silenced && role === 'guest' && handRaised;
  const atTurn = scene === 'turns' && role === 'guest' && myTurn && wishes.atMyTurn;
  const speaks = !silenced && (wishes.microphone || atTurn);
  const dark = scene === 'eyes-closed';
  const sends = role !== 'screen';
  return {
    microphone: sends && speaks ? 'all' : mayPress && pressed ? 'host' : 'nobody',
    camera: sends && wishes.camera && !dark,
    mayOpen: { microphone: sends && !silenced, camera: sends && !dark },
    mayPress,
    pictures: dark ? 'dark' : scene === 'card' && role === 'guest' ? 'voice' : 'shown',
  };
}

/**
 * [V4] What is left of somebody's wishes when the evening goes from one scene to the next: silence ends what opened a
 * microphone, the host's apart, and a break ends all that was opened. Nothing opens again by itself afterwards.
 *
 * @param before null for a device that has just come: it has wished for nothing yet
 */
export function wishesAfter(
  wishes: CallWishes,
  before: CallScene | null,
  scene: CallScene,
  role: CallRole,
): CallWishes {
  if (before === scene) return wishes;
  if (scene === 'rest') return { ...wishes, microphone: false, camera: false };
  return isSilent(scene) && role !== 'host' ? { ...wishes, microphone: false } : wishes;
}

interface Heard {
  readonly role: CallRole;
  readonly handRaised: boolean;
}

/**
 * [V1, V5] Whether a device plays the voice of another, whatever that one sends: a page that was tampered with does not
 * disturb the silence.
 */
export const hears = (scene: CallScene, listener: CallRole, speaker: Heard): boolean =>
  !isSilent(scene) ||
  speaker.role === 'host' ||
  (listener === 'host' && speaker.role === 'guest' && speaker.handRaised);

interface InPicture {
  readonly role: CallRole;
  readonly seat: SeatId | null;
}

/**
 * [V3] Whose picture is the large one: of whoever has the turn; of the table, where they sit at it; else the host's.
 *
 * @param others everybody in the call but the device that shows it
 * @param turn whose turn it is to speak; null outside a talk and where nobody has one
 */
export function largePicture<Peer extends InPicture>(
  others: readonly Peer[],
  turn: SeatId | null,
): Peer | undefined {
  const first = (role: CallRole) => others.find((peer) => peer.role === role);
  const speaker = turn === null ? undefined : others.find(({ seat }) => seat === turn);
  const table = turn === null ? undefined : first('room');
  return speaker ?? table ?? first('host') ?? first('room') ?? first('guest');
}
