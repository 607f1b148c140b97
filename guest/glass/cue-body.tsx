import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { SeatView, StageUnderWay } from '../../shared/wire/views.ts';
import { Discussion } from '../board/discussion.tsx';
import { Reveal } from '../board/reveal.tsx';
import { words } from '../language.ts';
import { useRoom } from '../seat/room.ts';
import { BreakBody, MissedNotice } from './break-body.tsx';
import { GroundRules } from './ground-rules.tsx';
import { KitList } from './kit-list.tsx';
import { StepBody } from './step-body.tsx';
import { TrialGlasses } from './trial-glasses.tsx';

interface CueBodyProps {
  readonly stage: StageUnderWay;
  readonly own: SeatView;
}

/** What stands under the verb: the card, the field, the rules, the board. */
export function CueBody({ stage, own }: CueBodyProps) {
  switch (stage.cue.kind) {
    case 'step':
      return <StepBody stage={stage} />;
    case 'practice':
      return <StepBody stage={stage} />;
    case 'gathering':
    case 'welcome':
      return (
        <>
          <KitList own={own} />
          <MissedNotice stage={stage} own={own} />
        </>
      );
    case 'ground-rules':
      return <GroundRules own={own} />;
    case 'water':
      return <MissedNotice stage={stage} own={own} />;
    case 'break':
      return <BreakBody stage={stage} own={own} />;
    case 'ranking':
      return null;
    case 'odd-one-out':
      return <TrialGlasses stage={stage} own={own} />;
    case 'discussion':
      return <Discussion stage={stage} own={own} />;
    case 'reveal':
      return <Reveal stage={stage} />;
    case 'farewell':
      return <Farewell stage={stage} own={own} />;
    default:
      return stage.cue.kind satisfies never;
  }
}

function Farewell({ stage, own }: CueBodyProps) {
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
      <Discussion stage={stage} own={own} />
    </div>
  );
}
