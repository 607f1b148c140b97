import type { BoardView } from '../../shared/wire/board.ts';
import type { ScreenShows, StageUnderWay, StageView, ToldResult } from '../../shared/wire/views.ts';

const theRoom: ScreenShows = { is: 'room' };

/** What the whole screen is given to, one thing at a time. */
export type Scene =
  | { readonly is: 'gathering'; readonly stage: StageUnderWay }
  | { readonly is: 'rules'; readonly stage: StageUnderWay }
  | { readonly is: 'step'; readonly stage: StageUnderWay; readonly dark: boolean }
  | { readonly is: 'rest'; readonly stage: StageUnderWay }
  | { readonly is: 'text'; readonly stage: StageUnderWay }
  /** The names, or what is on the table: one page at a time. */
  | {
      readonly is: 'pages';
      readonly stage: StageUnderWay;
      readonly board: BoardView | null;
      readonly chosen: string | null;
    }
  | { readonly is: 'result'; readonly stage: StageUnderWay; readonly told: ToldResult }
  | { readonly is: 'dark' }
  | { readonly is: 'farewell'; readonly stage: StageView };

/**
 * A talk takes the screen as soon as it is open, also one that the host has opened outside its own cue; a rest and the
 * goodbye go before it, unless the host has chosen a page of it. The dark goes before everything but the end.
 */
export function sceneOf(stage: StageView, board: BoardView | null, shows: ScreenShows = theRoom): Scene {
  if (stage.status === 'finished') return { is: 'farewell', stage };
  if (shows.is === 'dark') return shows;
  const { kind, step } = stage.cue;
  const open = board !== null && board.pours.length > 0 ? board : null;
  const chosen = shows.is === 'page' ? shows.page : null;
  const pages: Scene = { is: 'pages', stage, board: open, chosen };
  if (chosen !== null && (open !== null || stage.results.length > 0)) return pages;
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
      return open === null ? { is: 'rest', stage } : pages;
    case 'welcome':
    case 'discussion':
      return open === null ? { is: 'text', stage } : pages;
    case 'result': {
      const told = stage.results.find(({ cue }) => cue === stage.cue.id);
      if (told !== undefined) return { is: 'result', stage, told };
      return open === null ? { is: 'text', stage } : pages;
    }
    case 'reveal':
      return pages;
    case 'farewell':
      return { is: 'farewell', stage };
    default:
      return kind satisfies never;
  }
}
