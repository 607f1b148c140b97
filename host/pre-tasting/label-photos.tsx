import { useRef, useState } from 'preact/hooks';
import type { PhotoId, TastingId } from '../../core/ids.ts';
import type { Pour } from '../../core/tasting.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { bottle, plus } from '../../shared/ui/strokes.ts';
import type { AppContext } from '../app-context.ts';
import { sentenceFor } from '../language.ts';
import type { PlanEditor } from '../plan/plan-editor.ts';
import { type LabelSide, labelSides, withPhoto } from '../plan/pour-edits.ts';
import { LabelThumb } from '../plan/pours/label-thumb.tsx';
import { words } from '../plan/words.ts';
import { smallerPhoto } from './photo-resize.ts';

export interface LabelPhotosProps {
  readonly editor: PlanEditor;
  readonly app: AppContext;
  readonly tasting: TastingId;
  readonly pour: Pour;
  /** Told of each photo that the pour no longer has. */
  readonly onSetAside: (photo: PhotoId) => void;
}

export function LabelPhotos(props: LabelPhotosProps) {
  const said = words.ahead;
  return (
    <section class="stack" aria-labelledby="labels">
      <div>
        <h3 id="labels">{said.labels}</h3>
        <p class="small soft">{said.labelsHint}</p>
      </div>
      <div class="label-sides">
        {labelSides.map((side) => (
          <OneSide key={side} side={side} {...props} />
        ))}
      </div>
    </section>
  );
}

type Sending =
  | { readonly is: 'not' }
  | { readonly is: 'sending' }
  | { readonly is: 'failed'; readonly sentence: string };

interface OneSideProps extends LabelPhotosProps {
  readonly side: LabelSide;
}

function OneSide({ editor, app, tasting, pour, side, onSetAside }: OneSideProps) {
  const said = words.ahead;
  const name = said.sides[side];
  const photo = pour.photos?.[side];
  const [sending, setSending] = useState<Sending>({ is: 'not' });
  const camera = useRef<HTMLInputElement>(null);
  const shelf = useRef<HTMLInputElement>(null);

  const take = async (input: HTMLInputElement): Promise<void> => {
    const file = input.files?.[0];
    if (file === undefined) return;
    setSending({ is: 'sending' });
    const smaller = await smallerPhoto(file);
    // The same file can be chosen once more.
    input.value = '';
    if (smaller === undefined) return setSending({ is: 'failed', sentence: said.noPhoto });
    const answer = await app.api.keepPhoto(tasting, smaller);
    if (!answer.ok) return setSending({ is: 'failed', sentence: sentenceFor(answer.code) });
    setSending({ is: 'not' });
    if (photo !== undefined) onSetAside(photo);
    editor.edit((now) => withPhoto(now, pour.id, side, answer.body.photo));
    app.status.say(said.kept(name), { unseen: true });
  };
  const remove = (): void => {
    if (photo === undefined) return;
    onSetAside(photo);
    editor.change(
      said.gone,
      (now) => withPhoto(now, pour.id, side, undefined),
      (now) => withPhoto(now, pour.id, side, photo),
    );
  };
  const busy = sending.is === 'sending';
  return (
    <div class="label-side">
      <p class="field-label">{name}</p>
      {photo === undefined ? (
        <div class="label-none" aria-hidden="true">
          <Icon of={bottle} />
        </div>
      ) : (
        <LabelThumb photo={photo} words={said.photoOf(name, pour.name)} large />
      )}
      <Button
        label={busy ? said.sendingOf(name) : said.takeOf(name)}
        busy={busy}
        onPress={() => camera.current?.click()}
      >
        <Icon of={plus} />
        {busy ? said.sending : said.take}
      </Button>
      <Button kind="quiet" label={said.chooseOf(name)} disabled={busy} onPress={() => shelf.current?.click()}>
        {said.choose}
      </Button>
      {photo !== undefined && (
        <Button kind="quiet" label={said.awayOf(name)} disabled={busy} onPress={remove}>
          {said.away}
        </Button>
      )}
      <input
        hidden
        type="file"
        accept="image/*"
        capture="environment"
        ref={camera}
        onChange={(event) => void take(event.currentTarget)}
      />
      <input
        hidden
        type="file"
        accept="image/*"
        ref={shelf}
        onChange={(event) => void take(event.currentTarget)}
      />
      <p class="field-error" role="alert">
        {sending.is === 'failed' && sending.sentence}
      </p>
    </div>
  );
}
