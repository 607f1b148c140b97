import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { TastingId } from '../../../core/ids.ts';
import { lineupTable } from '../../../core/planning/pour-list/lineup-table.ts';
import { useLazyPart } from '../../../shared/page/lazy-part.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { download, share } from '../../../shared/ui/strokes.ts';
import type { HostApi } from '../../api.ts';
import { DeleteEvening } from '../../evening/delete-evening.tsx';
import { sentenceFor } from '../../language.ts';
import { minorDigits } from '../../numbers.ts';
import { goTo } from '../../route.ts';
import { saveAsFile } from '../../save-as-file.ts';
import { againOf, type FileProblem, readPlanFile, writePlanFile } from '../copies/plan-file.ts';
import { decodeFile } from '../csv/decode-file.ts';
import { tablesPart } from '../csv/tables-part.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';

interface CopiesPartProps {
  readonly editor: PlanEditor;
  readonly tasting: TastingId;
  readonly api: HostApi;
  /** The plan cannot be changed any more, so none is loaded in its place. */
  readonly fixed: boolean;
}

export function CopiesPart({ editor, tasting, api, fixed }: CopiesPartProps) {
  const plan = editor.draft.plan.value;
  const said = words.copies;
  const part = useLazyPart(tablesPart);
  const [busy, setBusy] = useState(false);
  const [problems, setProblems] = useState<readonly FileProblem[] | string>([]);
  const file = useRef<HTMLInputElement>(null);
  const name = said.fileName(plan.title);

  const duplicate = async (): Promise<void> => {
    setBusy(true);
    const title = said.copyOf(plan.title === '' ? words.untitled : plan.title);
    const answer = await api.createTasting(againOf(plan, title));
    setBusy(false);
    if (answer.ok) window.location.hash = `#/t/${answer.body.tasting}/plan`;
    else editor.status.say(sentenceFor(answer.code));
  };
  const load = async (chosen: File | undefined): Promise<void> => {
    if (chosen === undefined) return;
    const decoded = decodeFile(new Uint8Array(await chosen.arrayBuffer()));
    if (decoded.is !== 'text') return setProblems(decoded.is === 'too-large' ? said.tooLarge : said.notJson);
    const opened = readPlanFile(decoded.text);
    switch (opened.is) {
      case 'plan':
        setProblems([]);
        return editor.change(said.loaded, () => opened.plan);
      case 'not-json':
        return setProblems(said.notJson);
      case 'problems':
        return setProblems(opened.problems);
      default:
        return opened satisfies never;
    }
  };
  return (
    <div class="copies">
      <Copy
        hint={said.duplicateHint}
        button={
          <Button busy={busy} onPress={() => void duplicate()}>
            <Icon of={share} />
            {said.duplicate}
          </Button>
        }
      />
      <Copy
        hint={said.csvHint}
        button={
          <Button
            disabled={plan.pours.length === 0 || part === undefined}
            onPress={() =>
              part &&
              saveAsFile(
                `${name}.csv`,
                'text/csv',
                part.tables.writeTable(
                  lineupTable(plan, minorDigits(plan.currency), words.list, part.tables.decimal),
                ),
              )
            }
          >
            <Icon of={download} />
            {said.csv}
          </Button>
        }
      />
      <Copy
        hint={said.saveHint}
        button={
          <Button onPress={() => saveAsFile(`${name}.json`, 'application/json', writePlanFile(plan))}>
            <Icon of={download} />
            {said.save}
          </Button>
        }
      />
      {!fixed && (
        <Copy
          hint={said.loadHint}
          button={<Button onPress={() => file.current?.click()}>{said.load}</Button>}
        />
      )}
      <input
        ref={file}
        class="visually-hidden"
        type="file"
        accept=".json,application/json"
        aria-label={said.load}
        tabIndex={-1}
        onChange={(event) => {
          void load(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
      {problems.length > 0 && (
        <div role="alert" class="field-error">
          {typeof problems === 'string' ? (
            <p>{problems}</p>
          ) : (
            <>
              <p>{said.problems}</p>
              <ul>
                {problems.map(({ where, what }) => (
                  <li key={where}>{said.problem(where === '' ? said.whole : where, what)}</li>
                ))}
              </ul>
            </>
          )}
        </div>
      )}
      {!fixed && (
        <DeleteEvening
          tasting={tasting}
          title={plan.title === '' ? words.untitled : plan.title}
          api={api}
          status={editor.status}
          lead={said.remove.lead}
          goes={said.remove.goes}
          onGone={() => {
            // What still waits to be kept would be refused by now.
            editor.draft.stop();
            editor.status.say(said.remove.gone, { travels: true });
            goTo({ page: 'home' });
          }}
        />
      )}
    </div>
  );
}

function Copy({ hint, button }: { readonly hint: string; readonly button: ComponentChildren }) {
  return (
    <div class="plan-group">
      <div>{button}</div>
      <p class="small soft">{hint}</p>
    </div>
  );
}
