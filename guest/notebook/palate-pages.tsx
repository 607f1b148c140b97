import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import { Button } from '../../shared/ui/button.tsx';

interface PalatePagesProps {
  readonly scales: ComponentChildren;
  readonly places: ComponentChildren;
}

/** Two short pages in the place of one long one: how much of each taste first, for it fades; then where one has met it. */
export function PalatePages({ scales, places }: PalatePagesProps) {
  const [shown, setShown] = useState<'scales' | 'places'>('scales');
  return (
    <>
      <div class="palate-turn">
        {(['scales', 'places'] as const).map((page) => (
          <Button key={page} pressed={shown === page} onPress={() => setShown(page)}>
            {words.palatePages[page]}
          </Button>
        ))}
      </div>
      {shown === 'scales' ? scales : places}
    </>
  );
}
