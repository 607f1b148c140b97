import { useEffect } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import type { KeptSeat } from '../../shared/seats/kept-seats.ts';
import { newSeatKey } from '../../shared/seats/new-id.ts';
import type { SeatPass } from '../../shared/seats/seat-link.ts';
import { passesByItself } from '../../shared/wire/answer.ts';
import type { JoinSeatRequest } from '../../shared/wire/devices.ts';
import { words } from '../language.ts';
import { refusalSentence } from '../page/refusal-sentence.ts';

interface ArrivalPageProps {
  readonly pass: SeatPass;
  readonly onSeat: (seat: KeptSeat) => void;
  readonly onRefused: (said: string) => void;
}

/** While the server is not there. */
const againAfter = 3000;

/** Comes to a seat by a link, with a key of its own: whoever made the link does not know that one [S4]. */
export function ArrivalPage({ pass, onSeat, onRefused }: ArrivalPageProps) {
  useEffect(() => {
    const key = newSeatKey();
    let timer: ReturnType<typeof setTimeout> | undefined;
    let gone = false;
    const arrive = async (): Promise<void> => {
      const body: JoinSeatRequest = { tasting: pass.tasting, link: pass.key, key };
      const answer = await requestServer('/api/devices', { body });
      if (gone) return;
      const seat = { ...pass, code: null, title: null, cautioned: false };
      if (answer.ok) onSeat({ ...seat, key, cameBy: pass.key });
      else if (passesByItself(answer.code)) timer = setTimeout(() => void arrive(), againAfter);
      else onRefused(refusalSentence(answer.code));
    };
    void arrive();
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [pass]);
  return <p class="soft page-fetching">{words.link.connecting}</p>;
}
