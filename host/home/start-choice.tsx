import { drinks } from '../../core/drinks/drink-kinds.ts';
import { Button } from '../../shared/ui/button.tsx';
import { words } from '../language.ts';
import type { Beginning } from './starting-plan.ts';

interface StartChoiceProps {
  readonly busy: boolean;
  readonly onBegin: (how: Beginning) => void;
}

export function StartChoice({ busy, onBegin }: StartChoiceProps) {
  return (
    <section class="stack start-new" aria-labelledby="start-new">
      <h2 id="start-new">{words.home.begin}</h2>
      <Button kind="primary" busy={busy} onPress={() => onBegin({ from: 'demo' })}>
        <span class="start-words">
          {words.home.demo}
          <span class="start-hint">{words.home.demoHint}</span>
        </span>
      </Button>
      <div class="stack-tight">
        {drinks.map((drink) => (
          <Button key={drink} busy={busy} onPress={() => onBegin({ from: 'blank', drink })}>
            {words.home.blank[drink]}
          </Button>
        ))}
        <p class="small soft">{words.home.blankHint}</p>
      </div>
      <Button busy={busy} onPress={() => onBegin({ from: 'list' })}>
        <span class="start-words">
          {words.home.paste}
          <span class="start-hint">{words.home.pasteHint}</span>
        </span>
      </Button>
    </section>
  );
}
