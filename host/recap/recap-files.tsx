import { useSignal } from '@preact/signals';
import type { TastingId } from '../../core/ids.ts';
import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import { type CsvCell, csvFormOf } from '../../shared/csv/write-csv.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { download, print } from '../../shared/ui/strokes.ts';
import type { AppContext } from '../app-context.ts';
import { sentenceFor } from '../language.ts';
import { locale } from '../locale.ts';
import { saveAsFile } from '../save-as-file.ts';
import type { Names } from './names.ts';

interface RecapFilesProps {
  readonly tasting: TastingId;
  readonly title: string;
  readonly recap: EveningRecap;
  readonly names: Names;
  readonly app: AppContext;
}

const types = { csv: 'text/csv', json: 'application/json' } as const;

/** The table in the page's language; with its codes where the words for them cannot be fetched. */
async function inWords(csv: string, { pours }: EveningRecap, names: Names): Promise<string> {
  try {
    const { csvInWords } = await import('./csv-in-words.ts');
    const idOf = (glass: CsvCell) => pours.find(({ position }) => position === glass)?.id ?? '';
    return csvInWords(csv, names, idOf, csvFormOf(locale));
  } catch {
    return csv;
  }
}

/** Paper and files. */
export function RecapFiles({ tasting, title, recap, names, app }: RecapFilesProps) {
  const fetching = useSignal<keyof typeof types | null>(null);
  const fetchFile = async (kind: keyof typeof types): Promise<void> => {
    if (fetching.value !== null) return;
    fetching.value = kind;
    const answer = await app.api.recapFile(tasting, kind);
    fetching.value = null;
    if (!answer.ok) return app.status.say(sentenceFor(answer.code));
    const text = kind === 'csv' ? await inWords(answer.body, recap, names) : answer.body;
    saveAsFile(`${words.take.fileName(title)}.${kind}`, types[kind], text);
    app.status.say(words.take.saved);
  };
  return (
    <section class="stack screen-only" aria-labelledby="take-away">
      <h2 id="take-away">{words.take.title}</h2>
      <p class="soft">{words.take.hint}</p>
      <div class="recap-buttons">
        <Button busy={fetching.value === 'json'} onPress={() => void fetchFile('json')}>
          <Icon of={download} />
          {words.take.json}
        </Button>
        <Button busy={fetching.value === 'csv'} onPress={() => void fetchFile('csv')}>
          <Icon of={download} />
          {words.take.csv}
        </Button>
        <Button kind="primary" onPress={() => window.print()}>
          <Icon of={print} />
          {words.take.print}
        </Button>
      </div>
    </section>
  );
}
