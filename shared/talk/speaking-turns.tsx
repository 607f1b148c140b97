import type { SeatId } from '../../core/ids.ts';
import type { ClockView } from '../../core/session/views/stage.ts';
import type { BoardWords } from '../language/en/board.ts';
import { useTick } from '../ui/use-tick.ts';
import type { BoardSpeaker } from '../wire/board.ts';
import { type OpenBoard, shareOf, speakingOrder, talkNow, talkTime, turnNow } from './speaking-order.ts';

interface WhoSpeaksProps {
  readonly table: readonly BoardSpeaker[];
  /** All whose board is open, in any order. */
  readonly open: readonly OpenBoard[];
  /** See `turnsClock`: a break gives nobody a turn. */
  readonly clock: ClockView | null;
  /** The server's time. Keep it the same function between renders. */
  readonly now: () => number;
  readonly own: SeatId | null;
  readonly words: BoardWords;
  /** Of its heading, by where it stands on the page. */
  readonly level: 2 | 3;
}

/** A longer table would push what it talks about off the screen: then only those who come next are named. */
const mostAtOnce = 8;
const soonest = 4;

/** The drawn order, and whose turn it would be about now. Nothing rings and nobody is cut off. */
export function WhoSpeaks({ table, open, clock, now, own, words, level }: WhoSpeaksProps) {
  const Heading = `h${level}` as const;
  const talk = talkNow(open);
  const time = talk === null ? null : talkTime(talk, clock);
  const moment = useTick(now, { running: time !== null, anchor: time?.until ?? 0, period: 5000 });
  if (talk === null || table.length < 2) return null;
  const turn = turnNow({ table, pours: open }, clock, moment);
  const speakers = speakingOrder(table, talk.seed).map((speaker, index) => ({
    ...speaker,
    place: index + 1,
    speaks: speaker.seat === turn?.speaking.seat,
  }));
  const next = Math.max(
    0,
    speakers.findIndex(({ speaks }) => speaks),
  );
  const long = speakers.length > mostAtOnce;
  const soon = long
    ? speakers.filter(({ seat }, index) => seat === own || (index >= next && index < next + soonest))
    : speakers;
  return (
    <section class="talk-part">
      <Heading>{words.speaking.title}</Heading>
      <Speakers speakers={soon} own={own} words={words} />
      {long && (
        <details>
          <summary>{words.speaking.everybody(speakers.length)}</summary>
          <Speakers speakers={speakers} own={own} words={words} />
        </details>
      )}
      <p class="soft small">
        {words.speaking.hint}
        {turn && time && ` ${words.speaking.each(shareOf(time, table.length, talk.pours))}`}
        {talk.pours > 1 && ` ${words.speaking.rounds(talk.pours)}`}
      </p>
    </section>
  );
}

interface SpeakersProps {
  readonly speakers: readonly (BoardSpeaker & { readonly place: number; readonly speaks: boolean })[];
  readonly own: SeatId | null;
  readonly words: BoardWords;
}

function Speakers({ speakers, own, words }: SpeakersProps) {
  return (
    <ol class="speakers">
      {speakers.map(({ seat, name, remote, place, speaks }) => (
        <li key={seat} value={place} aria-current={speaks ? 'step' : undefined}>
          <bdi>{name}</bdi>
          {seat === own && <span class="soft"> ({words.you})</span>}
          {remote && <span class="soft"> ({words.atHome})</span>}
          {speaks && <span class="speaker-now"> {words.speaking.now}</span>}
        </li>
      ))}
    </ol>
  );
}
