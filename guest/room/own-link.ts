import { requestServer } from '../../shared/page/server-request.ts';
import { seatLink } from '../../shared/seats/seat-link.ts';
import type { IssuedKey } from '../../shared/wire/http.ts';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { useRoom } from './room.ts';

/**
 * A link of this guest's own to their seat and their notes. It has a key of its own, so that it can be ended without
 * ending this device; the same one is shown again. Undefined, and said why, when there is none.
 */
export function useOwnLink(): () => Promise<string | undefined> {
  const { seat, status, remember, follower } = useRoom();
  return async () => {
    const { tasting, key, ownLink } = seat.peek();
    const link = (made: string) => seatLink(window.location.origin, { tasting, key: made });
    const links = follower.devices.peek()?.devices.filter((each) => each.link && each.opens) ?? [];
    if (ownLink !== undefined && links.length > 0) return link(ownLink);
    const answer = await requestServer<IssuedKey>('/api/devices/links', { key, method: 'POST' });
    if (!answer.ok) {
      status.say(refusalSentence(answer.code));
      return undefined;
    }
    remember({ ownLink: answer.body.key });
    return link(answer.body.key);
  };
}
