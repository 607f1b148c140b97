import { Button } from '../../shared/ui/button.tsx';
import { words } from '../language.ts';
import { PageTitle } from '../page/page-title.tsx';

interface CautionsProps {
  readonly acceptLabel: string;
  readonly onAccept: () => void;
  /** With the rules of the table, which are agreed to together with them. */
  readonly late?: boolean;
}

/** Shown on each device before the first glass, and again whenever somebody asks. */
export function Cautions({ acceptLabel, onAccept, late }: CautionsProps) {
  return (
    <main class="page cautions">
      <PageTitle>{words.cautions.title}</PageTitle>
      <ul class="plain-list">
        {words.cautions.list.concat(late ? words.rules.list : []).map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <p class="soft small">{words.cautions.law}</p>
      <div class="foot">
        <Button kind="primary" size="big" onPress={onAccept}>
          {acceptLabel}
        </Button>
      </div>
    </main>
  );
}
