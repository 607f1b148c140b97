import { BothThemes } from './both-themes.tsx';
import { words } from './sample-words.ts';

export function TypeScale() {
  return (
    <BothThemes
      title="Type"
      show={() => (
        <>
          <p class="verb">{words.verb}</p>
          <p class="say">{words.say}</p>
          <p class="lead">A lead, for what matters after the verb.</p>
          <p>{words.body}</p>
          <p class="small soft">Small and soft, for what can wait.</p>
          <p class="figures">0123456789 09:41 +00:12</p>
        </>
      )}
    />
  );
}
