import { lazyComponent, lazyPart } from '../../shared/page/lazy-part.ts';
import { useRoom } from '../room/room.ts';

/** Who is at home has the call beside every page of the evening, and their voice in it stays when they turn to another. */
export const AtHome = () => (useRoom().follower.seat.value?.remote ? <CallStrip /> : null);

const CallStrip = lazyComponent(
  lazyPart(() => import('./call-part.ts')),
  ({ callPages }) => callPages.CallStrip,
  () => null,
);
