import type { HostFinished } from '../../core/session/views/host.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { timeOfDay, words } from '../language.ts';
import { hrefOf } from '../route.ts';

interface FinishedPageProps {
  readonly evening: EveningContext;
  readonly view: HostFinished;
}

/** After the evening; a host who finished by mistake goes on from here. */
export function FinishedPage({ evening: { commands, stored }, view }: FinishedPageProps) {
  const tasted = view.pours.filter((pour) => pour.reached && !pour.dropped).length;
  return (
    <main class="page page-narrow stack">
      <h1>{words.finished.title}</h1>
      <p class="soft">{view.title === '' ? words.untitled : view.title}</p>
      <p class="say">{words.finished.body}</p>
      <p>
        {[
          words.finished.tasted(tasted),
          words.finished.guests(view.seats.length),
          words.finished.lasted(timeOfDay(view.openedAt), timeOfDay(view.finishedAt)),
        ].join(' · ')}
      </p>
      <Notice kind="caution">
        <p>{words.finished.home}</p>
      </Notice>
      <p class="soft small">{words.finished.reopenHint}</p>
      <div class="thumb-bar">
        <Button
          busy={commands.waiting.value.has('Reopen')}
          onPress={() => void commands.send({ type: 'Reopen' })}
        >
          {words.finished.reopen}
        </Button>
        <a class="button" href={hrefOf({ page: 'home' })}>
          {words.finished.toHome}
        </a>
        <a class="button button-primary" href={hrefOf({ page: 'recap', tasting: stored.tasting })}>
          {recapWords.open}
        </a>
      </div>
    </main>
  );
}
