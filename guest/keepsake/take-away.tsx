import { useId, useState } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { download, print, share } from '../../shared/ui/strokes.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import { words } from '../language.ts';
import { copyText } from '../seat/copy-text.ts';
import { useRoom } from '../seat/room.ts';
import { keepsakeMarkdown } from './keepsake-markdown.ts';

/** Three ways out of the phone: a file, the clipboard, paper. */
export function TakeAway({ keepsake }: { readonly keepsake: Keepsake }) {
  const { status } = useRoom();
  const [byHand, setByHand] = useState(false);
  const id = useId();
  const text = keepsakeMarkdown(keepsake, words);
  return (
    <div class="stack-tight">
      <div class="take-away">
        <Button kind="primary" onPress={() => save(text, `${words.keepsake.fileName}.md`)}>
          <Icon of={download} />
          {words.keepsake.download}
        </Button>
        <Button
          onPress={async () => {
            const copied = await copyText(text);
            setByHand(!copied);
            status.say(copied ? words.keepsake.copied : words.keepsake.copyByHand);
          }}
        >
          <Icon of={share} />
          {words.keepsake.copy}
        </Button>
        <Button onPress={() => window.print()}>
          <Icon of={print} />
          {words.keepsake.print}
        </Button>
      </div>
      {byHand && (
        <>
          <label class="field-label" for={id}>
            {words.keepsake.text}
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
    </div>
  );
}

function save(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/markdown;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
