import { callWords } from '../language/en/call.ts';
import { callRefusals } from '../language/en/call-refusals.ts';
import type { CallPeer } from '../wire/call.ts';
import type { CallPlace } from './call.ts';
import type { MediaFailure } from './media-failure.ts';
import type { Device } from './own-media.ts';

/** How a device in the call is named to the others. */
export const nameOfPeer = ({ role, name }: CallPeer): string =>
  name ?? (role === 'host' ? callWords.host : role === 'room' ? callWords.table : callWords.screen);

/** Why this device is not in the call, as a sentence; null where nothing has happened. */
export function whyOut(place: CallPlace): string | null {
  if (place.at !== 'out' || place.why === null) return null;
  if (place.why === 'elsewhere') return callWords.elsewhere;
  if (place.why === 'sent-away') return callWords.sentAway;
  if (place.why === 'no-webrtc') return callWords.noWebrtc;
  return (callRefusals as Readonly<Record<string, string | undefined>>)[place.why] ?? callWords.tryLater;
}

/** What is wrong with the camera or the microphone, and what to do; of both the first. */
export function failureSentence(failures: Readonly<Record<Device, MediaFailure | null>>): string | null {
  const device = (['microphone', 'camera'] as const).find((each) => failures[each] !== null);
  const failure = device && failures[device];
  if (device === undefined || failure === null || failure === undefined) return null;
  return callWords.failure(callWords[device].name, callWords.failures[failure]);
}
