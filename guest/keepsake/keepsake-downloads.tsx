import { useId, useState } from 'preact/hooks';
import { csvFormOf } from '../../shared/csv/write-csv.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { copy, download, print, share } from '../../shared/ui/strokes.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import { locale } from '../language.ts';
import { copyText } from '../page/clipboard.ts';
import { useRoom } from '../room/room.ts';
import { inlinePhotos } from './inline-photos.ts';
import { keepsakeCsv } from './keepsake-csv.ts';
import { keepsakeHtml } from './keepsake-html.ts';
import { keepsakeJson } from './keepsake-json.ts';
import { keepsakeMarkdown } from './keepsake-markdown.ts';
import type { VocabularyOf } from './keepsake-text.ts';
import { homeWords, language } from './language.ts';

interface KeepsakeDownloadsProps {
  readonly keepsake: Keepsake;
  readonly vocabularyOf: VocabularyOf;
}

/** Ways out of the phone: a file, what the phone can share with, the clipboard, paper. */
export function KeepsakeDownloads({ keepsake, vocabularyOf }: KeepsakeDownloadsProps) {
  const { status } = useRoom();
  const [byHand, setByHand] = useState(false);
  const [saving, setSaving] = useState(false);
  const id = useId();
  const words = homeWords.take;
  const text = keepsakeMarkdown(keepsake, vocabularyOf, language);
  const title = keepsake.title || homeWords.title;
  return (
    <div class="stack-tight">
      <div class="stack-tight take-away">
        <Button
          kind="primary"
          busy={saving}
          onPress={async () => {
            setSaving(true);
            save(keepsakeHtml(keepsake, vocabularyOf, language, await inlinePhotos(keepsake)), 'html');
            setSaving(false);
          }}
        >
          <Icon of={download} />
          {words.page}
        </Button>
        <Button onPress={() => save(text, 'md')}>
          <Icon of={download} />
          {words.download}
        </Button>
        {'share' in navigator && (
          <Button
            onPress={async () => {
              if (!(await shared(title, text))) status.say(words.notShared);
            }}
          >
            <Icon of={share} />
            {words.share}
          </Button>
        )}
        <Button
          onPress={async () => {
            const copied = await copyText(text);
            setByHand(!copied);
            status.say(copied ? words.copied : words.copyByHand);
          }}
        >
          <Icon of={copy} />
          {words.copy}
        </Button>
        <Button onPress={() => window.print()}>
          <Icon of={print} />
          {words.print}
        </Button>
      </div>
      {byHand && (
        <>
          <label class="field-label" for={id}>
            {words.text}
          </label>
          <textarea
            class="field-input"
            id={id}
            readOnly
            rows={8}
            value={text}
            ref={(area) => area?.select()}
            onFocus={(event) => event.currentTarget.select()}
          />
        </>
      )}
      <details>
        <summary>{words.other}</summary>
        <div class="stack-tight take-away">
          <Button
            onPress={() => save(keepsakeCsv(keepsake, vocabularyOf, language, csvFormOf(locale)), 'csv')}
          >
            {words.csv}
          </Button>
          <Button onPress={() => save(keepsakeJson(keepsake, vocabularyOf, language), 'json')}>
            {words.json}
          </Button>
        </div>
      </details>
    </div>
  );
}

const kinds = { html: 'text/html', md: 'text/markdown', csv: 'text/csv', json: 'application/json' } as const;

function save(text: string, ending: keyof typeof kinds): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${kinds[ending]};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${homeWords.take.fileName}.${ending}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** True as well when the guest has thought better of it. */
async function shared(title: string, text: string): Promise<boolean> {
  try {
    await navigator.share({ title, text });
    return true;
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError';
  }
}
