import type { ComponentChildren } from 'preact';
import { words } from './sample-words.ts';

interface BothThemesProps {
  readonly title: string;
  /** Called once for each theme, so that each copy has a state of its own. */
  readonly show: () => ComponentChildren;
}

export function BothThemes({ title, show }: BothThemesProps) {
  return (
    <section class="style-section">
      <h2>{title}</h2>
      <div class="style-pair">
        {(['linen', 'cellar'] as const).map((theme) => (
          <div key={theme} class="style-theme" data-theme={theme}>
            <p class="small soft">{words[theme]}</p>
            {show()}
          </div>
        ))}
      </div>
    </section>
  );
}
