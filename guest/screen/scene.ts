import type { BoardView } from '../../shared/wire/board.ts';
import type { StageUnderWay, StageView, ToldResult } from '../../shared/wire/views.ts';

/** What the whole screen is given to, one thing at a time. */
export type Scene =
  | { readonly is: 'gathering'; readonly stage: StageUnderWay }
  | { readonly is: 'rules'; readonly stage: StageUnderWay }
  | { readonly is: 'step'; readonly stage: StageUnderWay; readonly dark: boolean }
  | { readonly is: 'rest'; readonly stage: StageUnderWay }
  | { readonly is: 'text'; readonly stage: StageUnderWay }
  | { readonly is: 'board'; readonly stage: StageUnderWay; readonly board: BoardView }
  | { readonly is: 'result'; readonly stage: StageUnderWay; readonly told: ToldResult }
  | { readonly is: 'reveal'; readonly stage: StageUnderWay }
  | { readonly is: 'farewell'; readonly stage: StageView };

/**
 * A talk takes the screen as soon as it is open, also one that the host has opened outside its own cue; a rest, the
 * names and the goodbye go before it.
 */
export function sceneOf(stage: StageView, board: BoardView | null): Scene {
  if (stage.status === 'finished') return { is: 'farewell', stage };
  const { kind, step } = stage.cue;
  const open = board !== null && board.pours.length > 0 ? board : null;
  switch (kind) {
    case 'gathering':
      return { is: 'gathering', stage };
    case 'ground-rules':
      return { is: 'rules', stage };
    case 'practice':
    case 'step':
    case 'odd-one-out':
    case 'ranking':
      return { is: 'step', stage, dark: step === 'nose' };
    case 'break':
      return { is: 'rest', stage };
    case 'water':
      return open === null ? { is: 'rest', stage } : { is: 'board', stage, board: open };
    case 'welcome':
    case 'discussion':
      return open === null ? { is: 'text', stage } : { is: 'board', stage, board: open };
    case 'result': {
      const told = stage.results.find(({ cue }) => cue === stage.cue.id);
      if (told !== undefined) return { is: 'result', stage, told };
      return open === null ? { is: 'text', stage } : { is: 'board', stage, board: open };
    }
    case 'reveal':
      return { is: 'reveal', stage };
    case 'farewell':
      return { is: 'farewell', stage };
    default:
      return kind satisfies never;
  }
}
