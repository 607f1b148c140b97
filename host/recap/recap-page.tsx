import type { VNode } from 'preact';
import { useEffect } from 'preact/hooks';
import type { TastingId } from '../../core/ids.ts';
import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { Notice } from '../../shared/ui/notice.tsx';
import type { AppContext } from '../app-context.ts';
import { DeleteEvening } from '../evening/delete-evening.tsx';
import { dayOf, timeOfDay } from '../language.ts';
import { hrefOf } from '../route.ts';
import { ColoursFinding } from './colours-finding.tsx';
import { Finding } from './finding.tsx';
import { GuessFinding } from './guess-finding.tsx';
import { LikingFinding } from './liking-finding.tsx';
import type { Names } from './names.ts';
import { OrderFinding } from './order-finding.tsx';
import { unfoldForPrint } from './print-unfolding.ts';
import { RecapFiles } from './recap-files.tsx';
import { StructureFinding } from './structure-finding.tsx';
import { TimingFinding } from './timing-finding.tsx';
import { ToldFinding } from './told-finding.tsx';
import { TrialFinding } from './trial-finding.tsx';
import { WordsFinding } from './words-finding.tsx';

interface RecapPageProps {
  readonly tasting: TastingId;
  readonly recap: EveningRecap;
  readonly names: Names;
  readonly app: AppContext;
  readonly onGone: () => void;
}

/** What the host takes home: who won, what was agreed on, and where the time went. */
export function RecapPage({ tasting, recap, names, app, onGone }: RecapPageProps) {
  const { guests, timing } = recap;
  const title = recap.title === '' ? words.untitled : recap.title;
  useEffect(unfoldForPrint, []);
  const found = findingsOf(recap, names);
  const silent = recap.pours.filter(({ standing }) => standing === 'silent').map(({ name }) => name);
  return (
    <main class="recap">
      <header class="recap-head">
        <div>
          <h1>{words.title}</h1>
          <p class="lead">{title}</p>
          <p class="soft">
            {[
              words.when(dayOf(timing.openedAt), timeOfDay(timing.openedAt), timeOfDay(timing.finishedAt)),
              ...(recap.place === '' ? [] : [recap.place]),
              words.guests(guests, recap.remoteGuests),
            ].join(' · ')}
          </p>
        </div>
        <nav class="recap-nav screen-only" aria-label={words.title}>
          <a class="button button-quiet" href={hrefOf({ page: 'room', tasting })}>
            {words.toRoom}
          </a>
          <a class="button button-quiet" href={hrefOf({ page: 'home' })}>
            {words.toHome}
          </a>
        </nav>
      </header>
      {found.filter(({ says }) => says).map(({ finding }) => finding)}
      <TimingFinding recap={recap} />
      <Quiet of={found.filter(({ says }) => !says)} />
      <Notice kind="info">
        <p>{words.onlyPermitted}</p>
        <p>{words.released}</p>
        {silent.length > 0 && <p>{words.silent(silent)}</p>}
      </Notice>
      <RecapFiles tasting={tasting} title={title} recap={recap} names={names} app={app} />
      <DeleteEvening tasting={tasting} title={title} api={app.api} status={app.status} onGone={onGone} />
    </main>
  );
}

interface Found {
  /** Whether there is anything to say; what was not asked, or told by too few, is folded away. */
  readonly says: boolean;
  readonly finding: VNode;
}

function findingsOf({ guests, rankings, liking, ...recap }: EveningRecap, names: Names): Found[] {
  const told = (result: { readonly outcome: string }): boolean => result.outcome !== 'none';
  const common = { guests, names };
  return [
    // A recap of an earlier server has no such part.
    ...(recap.told ?? []).map((part) => ({
      says: true,
      finding: (
        <ToldFinding
          key={`${part.of} ${part.pours.map(({ pour }) => pour).join()}`}
          part={part}
          names={names}
        />
      ),
    })),
    ...(rankings.length === 0 && liking === null && (recap.told ?? []).length === 0
      ? [
          {
            says: false,
            finding: (
              <Finding
                key="ranking"
                title={words.ranking.title}
                said={words.ranking.noRanking}
                reckoned={[]}
              />
            ),
          },
        ]
      : []),
    ...rankings.map(({ pours, result }, index) => ({
      says: told(result),
      finding: (
        <OrderFinding
          key={pours.join()}
          title={rankings.length > 1 ? words.ranking.titleOf(index + 1) : words.ranking.title}
          result={result}
          {...common}
        />
      ),
    })),
    ...(liking === null
      ? []
      : [{ says: told(liking), finding: <LikingFinding key="liking" result={liking} {...common} /> }]),
    ...recap.trials.map((trial) => ({
      says: told(trial.result),
      finding: <TrialFinding key={trial.trial} trial={trial} {...common} />,
    })),
    // A recap that was kept by an earlier server knows nothing of guesses.
    ...(recap.guesses
      ? [
          {
            says: recap.guesses.length > 0,
            finding: (
              <GuessFinding key="guesses" facts={recap.guesses} drink={recap.pours[0]?.drink ?? 'spirit'} />
            ),
          },
        ]
      : []),
    {
      says: told(recap.words),
      finding: <WordsFinding key="words" result={recap.words} {...common} />,
    },
    {
      says: told(recap.colours),
      finding: <ColoursFinding key="colours" result={recap.colours} {...common} />,
    },
    {
      says: told(recap.structure),
      finding: <StructureFinding key="structure" result={recap.structure} {...common} />,
    },
  ];
}

/** What has nothing to say stands behind one line, with why. */
function Quiet({ of }: { readonly of: readonly Found[] }) {
  return of.length === 0 ? null : (
    <details class="recap-quiet">
      <summary>{words.quiet(of.length)}</summary>
      {of.map(({ finding }) => finding)}
    </details>
  );
}
