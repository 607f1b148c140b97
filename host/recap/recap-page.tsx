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
import { LikingFinding } from './liking-finding.tsx';
import type { Names } from './names.ts';
import { OrderFinding } from './order-finding.tsx';
import { unfoldForPrint } from './print-unfolding.ts';
import { RecapFiles } from './recap-files.tsx';
import { StructureFinding } from './structure-finding.tsx';
import { TimingFinding } from './timing-finding.tsx';
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
  const { guests, rankings, liking, timing } = recap;
  const title = recap.title === '' ? words.untitled : recap.title;
  useEffect(unfoldForPrint, []);
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
      {rankings.length === 0 && liking === null && (
        <Finding title={words.ranking.title} said={words.ranking.noRanking} reckoned={[]} />
      )}
      {rankings.map(({ pours, result }, index) => (
        <OrderFinding
          key={pours.join()}
          title={rankings.length > 1 ? words.ranking.titleOf(index + 1) : words.ranking.title}
          result={result}
          guests={guests}
          names={names}
        />
      ))}
      {liking !== null && <LikingFinding result={liking} guests={guests} names={names} />}
      {recap.trials.map((trial) => (
        <TrialFinding key={trial.trial} trial={trial} guests={guests} names={names} />
      ))}
      <WordsFinding result={recap.words} guests={guests} names={names} />
      <ColoursFinding result={recap.colours} guests={guests} names={names} />
      <StructureFinding result={recap.structure} guests={guests} names={names} />
      <TimingFinding recap={recap} />
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
