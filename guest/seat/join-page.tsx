import { useEffect } from 'preact/hooks';
import { type KeptSeat, keptSeats } from '../../shared/seats/kept-seats.ts';
import { Button } from '../../shared/ui/button.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { StemmedGlass } from '../../shared/ui/stemmed-glass.tsx';
import { words } from '../language.ts';
import { CodeForm } from '../page/code-form.tsx';
import { letNewVersionIn } from '../page/offline-page.ts';
import { PageTitle } from '../page/page-title.tsx';

interface JoinPageProps {
  readonly problem?: string | undefined;
  readonly onCode: (code: string) => void;
  readonly onSeat: (seat: KeptSeat) => void;
  readonly onEvenings: () => void;
}

/** The first screen asks one thing. Who has sat here before finds the seat again. */
export function JoinPage({ problem, onCode, onSeat, onEvenings }: JoinPageProps) {
  useEffect(() => void letNewVersionIn(), []);
  const seats = keptSeats().slice(0, 3);
  return (
    <main class="page door">
      <div class="door-glass">
        <StemmedGlass level={26} />
      </div>
      <PageTitle>{words.door.title}</PageTitle>
      {problem && <Notice kind="info">{problem}</Notice>}
      {seats.length > 0 && (
        <section class="stack" aria-label={words.door.keptTitle}>
          {seats.map((seat) => (
            <Button key={seat.key} kind="primary" onPress={() => onSeat(seat)}>
              {words.door.back(seat.title ?? words.door.keptUntitled)}
            </Button>
          ))}
          <Button kind="quiet" onPress={onEvenings}>
            {words.door.evenings}
          </Button>
        </section>
      )}
      <CodeForm class="stack code-form" words={words.door} onCode={onCode} />
      <LanguageChoice />
    </main>
  );
}
