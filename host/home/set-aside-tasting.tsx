import { useSignal } from '@preact/signals';
import { setAsideWords as words } from '../../shared/language/en/set-aside.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { ListedTasting, StoredPart, TastingTrouble } from '../../shared/wire/http.ts';
import type { AppContext } from '../app-context.ts';
import { words as hostWords, sentenceFor } from '../language.ts';
import { saveAsFile } from '../save-as-file.ts';

interface SetAsideTastingProps {
  readonly tasting: ListedTasting;
  readonly trouble: TastingTrouble;
  readonly app: AppContext;
  /** The list is another one now. */
  readonly onChanged: () => void;
}

/** The file of the store is broken somewhere. */
export function StoreDamage() {
  return (
    <Notice kind="caution">
      <p>{words.damaged}</p>
    </Notice>
  );
}

/** What of an evening reads and is not as it was saved. */
export function AlteredParts({ altered }: { readonly altered: readonly StoredPart[] }) {
  return <p class="tasting-altered">{words.altered(altered.map((part) => words.parts[part]))}</p>;
}

/** An evening that cannot go on: which, why, and what can be done about it. */
export function SetAsideTasting({ tasting, trouble, app, onChanged }: SetAsideTastingProps) {
  const asking = useSignal(false);
  const title = tasting.title === '' ? hostWords.untitled : tasting.title;
  const ask = (): void => {
    asking.value = true;
  };
  const close = (): void => {
    asking.value = false;
  };
  const save = async (): Promise<void> => {
    const answer = await app.api.asItLies(tasting.tasting);
    if (answer.ok) saveAsFile(`${title}.json`, 'application/json', answer.body);
    app.status.say(answer.ok ? words.saved : sentenceFor(answer.code));
  };
  const retry = async (): Promise<void> => {
    const answer = await app.api.wake(tasting.tasting);
    app.status.say(answer.ok ? words.woken : sentenceFor(answer.code));
    onChanged();
  };
  const remove = async (): Promise<void> => {
    const answer = await app.api.deleteTasting(tasting.tasting);
    close();
    app.status.say(answer.ok ? words.gone : sentenceFor(answer.code));
    onChanged();
  };
  const { kind, event } = trouble;
  return (
    <li class="tasting tasting-set-aside">
      <div class="tasting-words">
        <h3>{title}</h3>
        <p>
          <strong>{words.mark}.</strong> {words.why[kind](event ?? 0)}{' '}
          {kind === 'faulty' ? words.faultyHint : words.others}
        </p>
        <p class="soft">
          <span class="code-small">{hostWords.home.code(tasting.code)}</span>
        </p>
      </div>
      <div class="thumb-bar">
        <Button kind="danger" onPress={ask}>
          {words.remove}
        </Button>
        {kind === 'faulty' && <Button onPress={() => void retry()}>{words.retry}</Button>}
        <Button kind="primary" onPress={() => void save()}>
          {words.save}
        </Button>
      </div>
      {asking.value && (
        <Dialog
          title={title}
          onClose={close}
          close={words.keep}
          actions={
            <Button kind="danger" onPress={() => void remove()}>
              {words.removeGo}
            </Button>
          }
        >
          <p>{words.removeSure}</p>
        </Dialog>
      )}
    </li>
  );
}
