import { useEffect, useRef, useState } from 'preact/hooks';
import '../plan/plan.css';
import '../plan/figures.css';
import '../plan/folds.css';
import './pre-tasting.css';
import type { PhotoId, TastingId } from '../../core/ids.ts';
import { Button } from '../../shared/ui/button.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { back, next } from '../../shared/ui/strokes.ts';
import type { StoredPlan } from '../../shared/wire/http.ts';
import type { AppContext, TastingPageProps } from '../app-context.ts';
import { SelectField } from '../plan/fields/select-field.tsx';
import type { PlanEditor } from '../plan/plan-editor.ts';
import { PlanLoader } from '../plan/plan-loader.tsx';
import { photosIn } from '../plan/pour-edits.ts';
import { SaveStatus } from '../plan/save-status.tsx';
import { words } from '../plan/words.ts';
import { hrefOf } from '../route.ts';
import { PhoneLink } from './phone-link.tsx';
import { isTasted, TastedPour } from './tasted-pour.tsx';

/** The host tastes every pour before anybody else does: label photos, marks, strength and a line, on a phone. */
export function PreTastingPage({ tasting, app }: TastingPageProps) {
  return (
    <PlanLoader tasting={tasting} app={app}>
      {({ editor, stored }) => (
        <main class="page ahead">
          <Ahead editor={editor} stored={stored} app={app} />
        </main>
      )}
    </PlanLoader>
  );
}

interface AheadProps {
  readonly editor: PlanEditor;
  readonly stored: StoredPlan;
  readonly app: AppContext;
}

function Ahead({ editor, stored, app }: AheadProps) {
  const said = words.ahead;
  const plan = editor.draft.plan.value;
  const { tasting } = stored;
  const fixed = stored.stage !== 'planned';
  const [at, setAt] = useState(plan.pours[0]?.id);
  const index = Math.max(
    0,
    plan.pours.findIndex(({ id }) => id === at),
  );
  const pour = plan.pours[index];
  const setAside = usePhotosSetAside(editor, app, tasting);
  useEffect(() => {
    document.title = words.page(said.title);
  }, [said]);
  const go = (to: number): void => {
    setAt(plan.pours[to]?.id);
    window.scrollTo(0, 0);
  };
  return (
    <>
      <header class="ahead-head">
        <a class="button button-quiet" href={hrefOf({ page: 'plan', tasting })}>
          <Icon of={back} turns />
          {said.toPlan}
        </a>
        <div>
          <h1>{said.title}</h1>
          <SaveStatus editor={editor} />
        </div>
      </header>
      {fixed ? <Notice kind="info">{said.fixed}</Notice> : <Notice kind="water">{said.care}</Notice>}
      {pour === undefined ? (
        <EmptyState title={said.none}>
          <p>{said.noneHint}</p>
        </EmptyState>
      ) : (
        <>
          <SelectField
            label={said.which}
            value={pour.id}
            options={plan.pours.map((each, place) => ({
              value: each.id,
              label: said.option(place + 1, each.name, isTasted(each)),
            }))}
            onChoose={(value) => go(plan.pours.findIndex(({ id }) => id === value))}
          />
          <fieldset class="ahead-fields" disabled={fixed}>
            <TastedPour
              key={pour.id}
              editor={editor}
              app={app}
              tasting={tasting}
              pour={pour}
              onSetAside={setAside}
            />
          </fieldset>
          <nav class="ahead-foot" aria-label={said.which}>
            <Button disabled={index === 0} onPress={() => go(index - 1)}>
              {said.before}
            </Button>
            {index < plan.pours.length - 1 ? (
              <Button kind="primary" onPress={() => go(index + 1)}>
                {said.next}
                <Icon of={next} turns />
              </Button>
            ) : (
              <a class="button button-primary" href={hrefOf({ page: 'plan', tasting })}>
                {said.done}
              </a>
            )}
          </nav>
        </>
      )}
      <PhoneLink stored={stored} app={app} />
    </>
  );
}

/**
 * Photos that were replaced or removed leave the server when the page is left and no pour has them any more: until then a
 * removal can be undone.
 */
function usePhotosSetAside(
  editor: PlanEditor,
  app: AppContext,
  tasting: TastingId,
): (photo: PhotoId) => void {
  const aside = useRef(new Set<PhotoId>());
  useEffect(
    () => () => {
      const { plan, keeping } = editor.draft;
      if (keeping.value.is === 'failed' || keeping.value.is === 'elsewhere') return;
      const used = photosIn(plan.value);
      for (const photo of aside.current) if (!used.has(photo)) void app.api.dropPhoto(tasting, photo);
    },
    [editor, app, tasting],
  );
  return (photo) => void aside.current.add(photo);
}
