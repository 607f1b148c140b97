import type { Keeping } from './draft.ts';
import type { PlanEditor } from './plan-editor.ts';
import { words } from './words.ts';

/** Where the words on this page are, always in sight; what needs the host stands out. */
export function SaveStatus({ editor }: { readonly editor: PlanEditor }) {
  const keeping = editor.draft.keeping.value;
  return (
    <output
      class={keeping.is === 'failed' || keeping.is === 'elsewhere' ? 'small keeping-bad' : 'small soft'}
      aria-live={keeping.is === 'failed' ? 'polite' : 'off'}
    >
      {wordsOf(keeping)}
    </output>
  );
}

function wordsOf(keeping: Keeping): string {
  const said = words.keeping;
  switch (keeping.is) {
    case 'kept':
    case 'changed':
    case 'sending':
      return said[keeping.is];
    case 'failed':
      if (keeping.again) return said.failedAgain;
      if (keeping.code === 'already-open' || keeping.code === 'finished') return said.doorsOpen;
      return keeping.code === 'wrong-key' ? said.wrongKey : said.failed;
    case 'elsewhere':
      return said.elsewhereTitle;
    default:
      return keeping satisfies never;
  }
}
