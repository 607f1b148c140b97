import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { paperWords } from '../../shared/language/en/paper.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Choice, optionsOf } from '../../shared/ui/choice.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { ErrorNotice } from '../error-notice.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { type PaperKind, paperKinds } from '../paper-kind.ts';
import { hrefOf } from '../route.ts';
import { useKeptNumbers } from './kept-numbers.ts';
import { LabelSheets } from './label-sheets.tsx';
import { NoteSheets } from './note-sheets.tsx';
import { type PaperSize, usualPaper } from './paper-size.ts';
import { PlaceMats } from './place-mats.tsx';
import { RunSheetPages } from './run-sheet-pages.tsx';
import type { SheetProps } from './sheet-props.ts';
import { ShoppingSheet } from './shopping-sheet.tsx';

interface PaperPageProps {
  readonly evening: EveningContext;
  readonly kind: PaperKind;
}

/** Everything that an evening needs on paper, as it will be printed. */
export function PaperPage({ evening, kind }: PaperPageProps) {
  const { plan, tasting } = evening.stored;
  const paper = useSignal<PaperSize>(usualPaper(plan.lawOf, navigator.language));
  const title = plan.title === '' ? paperWords.untitled : plan.title;
  useEffect(() => {
    const before = document.title;
    // The browser offers it as the name of the file.
    document.title = `${title} · ${paperWords.kinds[kind]}`;
    return () => {
      document.title = before;
    };
  }, [title, kind]);

  const numbers = useKeptNumbers(evening, kind);

  return (
    <main class="paper">
      <header class="paper-head screen-only">
        <h1>{paperWords.title}</h1>
        <a class="button button-quiet" href={hrefOf({ page: 'doors', tasting })}>
          {paperWords.back}
        </a>
        <nav class="paper-kinds" aria-label={paperWords.title}>
          {paperKinds.map((each) => (
            <a
              key={each}
              class="button"
              href={hrefOf({ page: 'print', tasting, kind: each })}
              aria-current={each === kind ? 'page' : undefined}
            >
              {paperWords.kinds[each]}
            </a>
          ))}
        </nav>
      </header>
      {plan.pours.length === 0 ? (
        <EmptyState
          title={paperWords.noPours}
          action={
            <a class="button button-primary" href={hrefOf({ page: 'plan', tasting })}>
              {paperWords.toPlan}
            </a>
          }
        >
          <p>{paperWords.noPoursHint}</p>
        </EmptyState>
      ) : (
        <>
          <div class="paper-top screen-only">
            {/* Lists flow over whatever paper there is. */}
            {kind !== 'run-sheet' && kind !== 'shopping' && (
              <Choice
                legend={paperWords.size}
                across
                value={paper.value}
                options={optionsOf(['A4', 'Letter'], paperWords.sizes)}
                onChoose={setterOf(paper)}
              />
            )}
            <div class="stack-tight paper-print">
              <Button kind="primary" size="big" onPress={() => window.print()}>
                {paperWords.print}
              </Button>
              <p class="small soft">
                {kind === 'mats' || kind === 'labels' ? paperWords.printHow[kind] : paperWords.printFlow}
              </p>
            </div>
          </div>
          {numbers.failed !== undefined && (
            <div class="screen-only">
              <ErrorNotice
                sentence={paperWords[numbers.failed === 'plan-changed' ? 'planChanged' : 'numbersNotKept']}
                onRetry={numbers.again}
              />
            </div>
          )}
          <Sheets key={kind} evening={evening} kind={kind} paper={paper.value} title={title} />
        </>
      )}
    </main>
  );
}

function Sheets({ kind, ...props }: SheetProps & { readonly kind: PaperKind }) {
  switch (kind) {
    case 'mats':
      return <PlaceMats {...props} />;
    case 'notes':
      return <NoteSheets {...props} />;
    case 'labels':
      return <LabelSheets {...props} />;
    case 'run-sheet':
      return <RunSheetPages {...props} />;
    case 'shopping':
      return <ShoppingSheet {...props} />;
    default:
      return kind satisfies never;
  }
}
