import { useEffect, useRef } from 'preact/hooks';
import { useLazyPart } from '../../shared/page/lazy-part.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { back, next as nextStroke } from '../../shared/ui/strokes.ts';
import { words as appWords } from '../language.ts';
import { goTo, hrefOf } from '../route.ts';
import { settled } from './draft.ts';
import { furtherPart } from './further-part.ts';
import { PartList } from './part-list.tsx';
import { type Part, parts } from './part-summaries.ts';
import { PoursPart } from './parts/pours-part.tsx';
import type { PlanEditor, StoredPlanEditor } from './plan-editor.ts';
import { SaveStatus } from './save-status.tsx';
import { words } from './words.ts';

interface PlanLayoutProps extends StoredPlanEditor {
  /** The part that the address names. */
  readonly part: string | undefined;
}

/**
 * The list of parts, each with what it holds in a few words, and beside it the one that is open. On a phone the list
 * comes first and a part takes its place.
 */
export function PlanLayout({ editor, stored, api, part: named }: PlanLayoutProps) {
  const plan = editor.draft.plan.value;
  const opened = parts.find((each) => each === named);
  const part = opened ?? 'pours';
  const heading = useRef<HTMLHeadingElement>(null);
  const go = (to: Part | undefined): void => goTo({ page: 'plan', tasting: stored.tasting, part: to });
  // A plan without pours begins with them, and the way back from there leads out of the plan.
  useEffect(() => {
    if (opened === undefined && plan.pours.length === 0)
      window.location.replace(hrefOf({ page: 'plan', tasting: stored.tasting, part }));
  }, []);
  const before = useRef(opened);
  useEffect(() => {
    if (before.current === opened) return;
    before.current = opened;
    window.scrollTo(0, 0);
    if (opened !== undefined) heading.current?.focus({ preventScroll: true });
  }, [opened]);
  useEffect(() => {
    document.title = words.page(plan.title);
  }, [plan.title]);
  const planned = stored.stage === 'planned';
  useEffect(() => {
    if (planned) editor.draw();
  }, [editor, planned]);
  const after = parts[parts.indexOf(part) + 1];
  const doors = `#/t/${stored.tasting}/doors`;
  const fixed = !planned;

  return (
    <>
      <header class="plan-head">
        <a class="button button-quiet plan-home" href="#/">
          <Icon of={back} turns />
          {words.home}
        </a>
        <div class="plan-title">
          <h1>{plan.title === '' ? words.untitled : plan.title}</h1>
          <SaveStatus editor={editor} />
        </div>
        {plan.pours.length > 0 ? (
          <a class="button button-primary" href={doors}>
            {words.doors}
            <Icon of={nextStroke} turns />
          </a>
        ) : (
          <p class="small soft plan-doors-need">{words.doorsNeed}</p>
        )}
      </header>
      {stored.stage !== 'planned' && (
        <Notice kind="info">
          <p>{stored.stage === 'under-way' ? words.underWay : words.finished}</p>
        </Notice>
      )}
      <Elsewhere editor={editor} />
      <div class={opened === undefined ? 'plan-body' : 'plan-body plan-opened'}>
        <nav class="plan-rail" aria-label={words.allParts}>
          <PartList plan={plan} part={part} tasting={stored.tasting} />
        </nav>
        <section class="plan-part" aria-labelledby="plan-part">
          <div class="plan-back">
            <Button kind="quiet" onPress={() => go(undefined)}>
              <Icon of={back} turns />
              {words.allParts}
            </Button>
          </div>
          <h2 id="plan-part" ref={heading} tabIndex={-1}>
            {words.parts[part]}
          </h2>
          {/* Folds and links go on working in it; fields and buttons do not. */}
          <fieldset class="plan-fields" disabled={fixed && part !== 'copies' && part !== 'before'}>
            <OpenPart key={part} part={part} editor={editor} stored={stored} api={api} fixed={fixed} />
          </fieldset>
          {after !== undefined && plan.pours.length > 0 && (
            <div class="plan-next">
              <Button kind="quiet" onPress={() => go(after)}>
                {words.next(words.parts[after])}
                <Icon of={nextStroke} turns />
              </Button>
            </div>
          )}
        </section>
      </div>
      <LanguageChoice settle={() => settled(editor.draft)} />
    </>
  );
}

interface OpenPartProps extends StoredPlanEditor {
  readonly part: Part;
  /** The doors have been opened: the plan can be read and copied, and not changed. */
  readonly fixed: boolean;
}

function OpenPart({ part, ...props }: OpenPartProps) {
  return part === 'pours' ? (
    <PoursPart editor={props.editor} tasting={props.stored.tasting} />
  ) : (
    <FurtherPart {...props} part={part} />
  );
}

type FurtherPartProps = OpenPartProps & { readonly part: Exclude<Part, 'pours'> };

function FurtherPart({ part, editor, stored, api, fixed }: FurtherPartProps) {
  const further = useLazyPart(furtherPart)?.further;
  if (further === undefined) {
    return furtherPart.failing.value ? <p role="alert">{appWords.noAnswer}</p> : <p>{appWords.loading}</p>;
  }
  switch (part) {
    case 'guests':
      return <further.GuestsPart editor={editor} stored={stored} api={api} />;
    case 'evening':
      return <further.EveningPart editor={editor} />;
    case 'course':
      return <further.CoursePart editor={editor} />;
    case 'strength':
      return <further.StrengthPart editor={editor} />;
    case 'shopping':
      return <further.ShoppingPart editor={editor} />;
    case 'table':
      return <further.TablePart editor={editor} />;
    case 'before':
      return <further.BeforePart editor={editor} stored={stored} api={api} />;
    case 'copies':
      return <further.CopiesPart editor={editor} tasting={stored.tasting} api={api} fixed={fixed} />;
    default:
      return part satisfies never;
  }
}

function Elsewhere({ editor }: { readonly editor: PlanEditor }) {
  const keeping = editor.draft.keeping.value;
  if (keeping.is !== 'elsewhere') return null;
  const said = words.keeping;
  const { plan } = keeping.theirs;
  return (
    <Notice kind="caution" title={said.elsewhereTitle}>
      <p>{said.elsewhere(plan.title === '' ? words.untitled : plan.title, plan.pours.length)}</p>
      <div class="plan-buttons">
        <Button onPress={editor.draft.takeTheirs}>{said.takeTheirs}</Button>
        <Button onPress={editor.draft.keepMine}>{said.keepMine}</Button>
      </div>
    </Notice>
  );
}
