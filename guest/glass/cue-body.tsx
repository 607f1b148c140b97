import { lazyComponent } from '../../shared/page/lazy-part.ts';
import { Button } from '../../shared/ui/button.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { SeatedViews } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { LoadingLine } from '../page/loading-line.tsx';
import { boardPart, notebookPart, seatPart } from '../parts/lazy-parts.ts';
import { useRoom } from '../room/room.ts';
import { BreakBody, MissedNotice } from './break-body.tsx';
import { KitList } from './kit-list.tsx';
import { StepBody } from './step-body.tsx';

/** What stands under the verb: the card, the field, the rules, the board. */
export function CueBody({ stage, own }: SeatedViews) {
  switch (stage.cue.kind) {
    case 'step':
    case 'practice':
      return <StepBody stage={stage} own={own} />;
    case 'gathering':
    case 'welcome':
      return (
        <>
          <KitList own={own} />
          <MissedNotice stage={stage} own={own} />
          {stage.cue.kind === 'gathering' && (
            <>
              <Tone />
              <LanguageChoice />
            </>
          )}
        </>
      );
    case 'ground-rules':
      return <GroundRules own={own} />;
    case 'water':
      return <MissedNotice stage={stage} own={own} />;
    case 'break':
      return <BreakBody stage={stage} own={own} />;
    case 'ranking':
      return <Ranking stage={stage} />;
    case 'odd-one-out':
      return <OddOneOut stage={stage} own={own} />;
    case 'discussion':
      return <Talk stage={stage} own={own} />;
    case 'result':
      return <Told stage={stage} />;
    case 'reveal':
      return <Names stage={stage} />;
    case 'farewell':
      return <Farewell stage={stage} own={own} />;
    default:
      return stage.cue.kind satisfies never;
  }
}

function Farewell({ stage, own }: SeatedViews) {
  const { page } = useRoom();
  return (
    <div class="stack">
      <Notice kind="water">{words.keepsake.care}</Notice>
      <Button
        kind="primary"
        onPress={() => {
          page.value = { at: 'keepsake' };
        }}
      >
        {words.keepsake.open}
      </Button>
      <Talk stage={stage} own={own} />
    </div>
  );
}

const Tone = lazyComponent(seatPart, ({ seatPages }) => seatPages.ToneTest);
const GroundRules = lazyComponent(seatPart, ({ seatPages }) => seatPages.GroundRules, LoadingLine);
const Ranking = lazyComponent(notebookPart, ({ notebookPages }) => notebookPages.RankingBody, LoadingLine);
const OddOneOut = lazyComponent(notebookPart, ({ notebookPages }) => notebookPages.OddPick, LoadingLine);
const Names = lazyComponent(boardPart, ({ boardPages }) => boardPages.Reveal, LoadingLine);
const Told = lazyComponent(boardPart, ({ boardPages }) => boardPages.Result, LoadingLine);
const Talk = lazyComponent(boardPart, ({ boardPages }) => boardPages.Discussion, LoadingLine);
