import { lazyComponent, lazyPart } from '../../shared/page/lazy-part.ts';
import { useRoom } from '../room/room.ts';

/** Who is at home has the call beside every page of the evening, and their voice in it stays when they turn to another. */
export const AtHome = () => {
  const { follower, seat } = useRoom();
  const own = follower.seat.value;
  // The cautions come first.
  return own?.remote && own.presence === 'seated' && seat.value.cautioned ? <CallStrip own={own} /> : null;
};

const CallStrip = lazyComponent(
  lazyPart(() => import('./call-part.ts')),
  ({ callPages }) => callPages.CallStrip,
  // Its place is kept: what stands below would be pushed from under the eye.
  () => <div class="call-coming" />,
);
