import { useEffect, useState } from 'preact/hooks';
import { type GuessProgress, guessTrend } from '../../shared/guess/guess-progress.ts';
import { guessWords } from '../../shared/language/en/guess.ts';
import { requestServer } from '../../shared/page/server-request.ts';
import { forgetSeat, type KeptSeat, keptSeats } from '../../shared/seats/kept-seats.ts';
import { Button } from '../../shared/ui/button.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import type { Keepsake } from '../../shared/wire/http.ts';
import { words as pageWords } from '../language.ts';
import { forgetNotes } from '../page/device-storage.ts';
import { PageTitle } from '../page/page-title.tsx';
import { dayOf } from './evening-line.ts';
import { type EveningProgress, progressOf } from './evening-progress.ts';
import { homeWords } from './language.ts';

interface EveningsPageProps {
  readonly onSeat: (seat: KeptSeat) => void;
  readonly onBack: () => void;
}

interface KnownEvening {
  readonly seat: KeptSeat;
  /** Null while it is on its way, and where its server does not answer or it has been deleted. */
  readonly keepsake: Keepsake | null;
}

/** Every evening that this device remembers in one place, so that somebody can see how their nose has come along. */
export function EveningsPage({ onSeat, onBack }: EveningsPageProps) {
  const [evenings, setEvenings] = useState<readonly KnownEvening[]>(() =>
    keptSeats().map((seat) => ({ seat, keepsake: null })),
  );
  const [fetched, setFetched] = useState(false);
  useEffect(() => {
    let gone = false;
    void Promise.all(keptSeats().map(fetchEvening)).then((all) => {
      if (gone) return;
      setEvenings(all.toSorted((one, other) => momentOf(other) - momentOf(one)));
      setFetched(true);
    });
    return () => {
      gone = true;
    };
  }, []);

  const forget = (seat: KeptSeat): void => {
    forgetSeat(seat);
    forgetNotes(seat);
    setEvenings(evenings.filter((each) => each.seat.key !== seat.key));
  };
  const known = evenings.flatMap(({ keepsake }) => keepsake ?? []).toReversed();
  const progress = new Map(progressOf(known).map((each, index) => [known[index], each]));
  const tapped = [...progress.values()].some((each) => each.words > 0);
  const words = homeWords.evenings;
  return (
    <main class="page">
      <PageTitle>{words.title}</PageTitle>
      {evenings.length === 0 ? (
        <EmptyState title={words.none}>
          <p>{words.noneHint}</p>
        </EmptyState>
      ) : (
        <>
          <p class="soft">{words.lead}</p>
          {known.length > 1 && tapped && <WordsOverTime progress={[...progress.values()]} />}
          <GuessTrend progress={[...progress.values()]} />
          <ul class="evenings">
            {evenings.map(({ seat, keepsake }) => (
              <li key={seat.key} class="stack-tight">
                <h2>
                  <bdi>{keepsake?.title || seat.title || words.untitled}</bdi>
                </h2>
                {keepsake === null ? (
                  <p class="soft">{fetched ? words.unreachable : homeWords.fetching}</p>
                ) : (
                  <Progress keepsake={keepsake} progress={progress.get(keepsake)} />
                )}
                <div class="row">
                  <Button onPress={() => onSeat(seat)}>
                    {words.goTo}
                    <span class="visually-hidden"> ({keepsake?.title || seat.title || words.untitled})</span>
                  </Button>
                  <Button kind="quiet" onPress={() => forget(seat)}>
                    {words.forget}
                    <span class="visually-hidden"> ({keepsake?.title || seat.title || words.untitled})</span>
                  </Button>
                </div>
              </li>
            ))}
          </ul>
          <p class="soft small">{words.forgetHint}</p>
        </>
      )}
      <div class="foot">
        <Button kind="primary" size="big" onPress={onBack}>
          {words.back}
        </Button>
      </div>
    </main>
  );
}

async function fetchEvening(seat: KeptSeat): Promise<KnownEvening> {
  const answer = await requestServer<Keepsake>(`/api/keepsake/${encodeURIComponent(seat.tasting)}`, seat);
  return { seat, keepsake: answer.ok ? answer.body : null };
}

/** When it began; by its first note where the host has set no date. */
function momentOf({ keepsake }: KnownEvening): number {
  if (keepsake === null) return 0;
  const notes = keepsake.pours.flatMap(({ entries }) => entries.map(({ savedAt }) => savedAt));
  return keepsake.startsAt === null
    ? Math.min(...notes, Number.MAX_SAFE_INTEGER)
    : Date.parse(keepsake.startsAt);
}

interface ProgressProps {
  readonly keepsake: Keepsake;
  readonly progress: EveningProgress | undefined;
}

function Progress({ keepsake: { startsAt, timeZone, place }, progress }: ProgressProps) {
  const words = homeWords.evenings;
  const when = [
    ...(startsAt === null ? [] : [dayOf(startsAt, timeZone, pageWords.language)]),
    ...(place === '' ? [] : [place]),
  ];
  if (progress === undefined) return null;
  const facts = [
    words.glasses(progress.glasses),
    `${words.words(progress.words)}${progress.fresh < progress.words ? ` (${words.fresh(progress.fresh)})` : ''}`,
    ...(progress.perGlass > 0 ? [words.perGlass(progress.perGlass)] : []),
    ...(progress.odd.of > 0 ? [words.odd(progress.odd.right, progress.odd.of)] : []),
    ...(progress.guesses === null ? [] : guessFactsOf(progress.guesses)),
    ...progress.best.map((name) => words.best(name)),
  ];
  return (
    <>
      {when.length > 0 && <p class="soft small">{when.join(' · ')}</p>}
      <p>{facts.join(' · ')}</p>
    </>
  );
}

/** A bar for each evening; the figures stand in the list below. */
function WordsOverTime({ progress }: { readonly progress: readonly EveningProgress[] }) {
  const most = Math.max(1, ...progress.map(({ words }) => words));
  return (
    <figure class="words-over-time">
      <svg
        viewBox={`0 0 ${progress.length * 12} 40`}
        preserveAspectRatio="none"
        role="img"
        aria-label={`${homeWords.evenings.chart}: ${progress.map(({ words }) => words).join(', ')}`}
      >
        {progress.map(({ words }, index) => {
          const height = (words / most) * 38;
          return <rect key={index} x={index * 12 + 2} y={39 - height} width="8" height={height + 1} />;
        })}
      </svg>
      <figcaption class="soft small">{homeWords.evenings.chart}</figcaption>
    </figure>
  );
}

const guessFactsOf = ({ asNear, sureness }: GuessProgress): string[] => [
  guessWords.progress.near(1 - asNear),
  ...(sureness === undefined ? [] : [guessWords.progress.sure(sureness)]),
];

/** Whether the guesses get nearer, and how often chance alone would look like that. */
function GuessTrend({ progress }: { readonly progress: readonly EveningProgress[] }) {
  const guesses = progress.map((each) => each.guesses);
  if (guesses.every((each) => each === null)) return null;
  const trend = guessTrend(guesses);
  const words = guessWords.progress.trend;
  return <p class="soft">{trend === undefined ? words.few : trendSentence(trend)}</p>;
}

function trendSentence({ score, chance }: NonNullable<ReturnType<typeof guessTrend>>): string {
  const words = guessWords.progress.trend;
  if (score <= 0) return words.not;
  const times = Math.max(2, Math.round(1 / chance));
  return chance <= 0.05 ? words.nearer(times) : words.maybe(times);
}
