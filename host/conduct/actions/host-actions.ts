import type { CueId, PourId, SeatId } from '../../../core/ids.ts';
import { type Cue, isClosing, pourOf } from '../../../core/running-order/cue.ts';
import type { ReminderKind } from '../../../core/session/state.ts';
import type { HostPour, HostUnderWay } from '../../../core/session/views/host.ts';
import type { Bottle } from '../../../core/tasting.ts';
import { type EpochMs, seconds } from '../../../core/units.ts';
import type { Status } from '../../../shared/ui/status.ts';
import type { SentHostCommand } from '../../../shared/wire/commands.ts';
import type { CommandsUnderWay } from '../../evening/commands-under-way.ts';
import { words } from '../../language.ts';
import type { PrimaryAction } from './primary-action.ts';

/** Everything a host does in a room, each with its word and, where something is taken away, its undo. */
export interface HostActions {
  takeStep(step: PrimaryAction): void;
  back(from: CueId): void;
  jump(to: Cue, name: string, from: CueId): void;
  holdOrResume(clock: HostUnderWay['clock']): void;
  minute(): void;
  /** Whether the steps of a glass run by themselves, from now on and on the next evening. */
  letStepsRun(run: boolean): void;
  callBreak(minutes: number, from: CueId): void;
  remind(kind: ReminderKind): void;
  openTalk(pours: readonly PourId[]): void;
  closeTalk(pours: readonly PourId[]): void;
  /** `name`: as it may be shown. */
  drop(pour: Pick<HostPour, 'id'>, name: string, at: Cue | undefined): void;
  /** Another bottle in this glass; `before` is what stood there. */
  swap(pour: PourId, bottle: Bottle, before: Bottle, said: string): void;
  mend(pour: PourId, bottle: Bottle, before: Bottle, said: string): void;
  mendTitle(title: string, before: string, said: string): void;
  addPour(added: Omit<Extract<SentHostCommand, { type: 'AddPour' }>, 'type'>, said: string): void;
  reorder(order: readonly PourId[], before: readonly Pick<HostPour, 'id'>[], said: string): void;
  /** The length or the words of a coming cue; `say` is what is said without words of the host's own. */
  editCue(cue: Cue, changes: Pick<EditCue, 'seconds' | 'say'>, said: string): void;
  /** Fits what remains to an end; `said` tells what came of it. */
  fit(endsAt: EpochMs, before: EndBefore, said: string): void;
  dropClosing(at: Cue | undefined): void;
  shortenTalks(): void;
  /** Ends the evening; before that it opens the talk about what was talked about unopened, for the recap. */
  finish(talked: readonly PourId[]): void;
  removeSeat(seat: SeatId, name: string): void;
  /** For everything that neither needs a word nor an undo. */
  just(command: SentHostCommand): void;
}

type EditCue = Extract<SentHostCommand, { type: 'EditCue' }>;

/** What undoing gives back: the wished end as it was, and whether the running order was fitted to it. */
type EndBefore = Pick<HostUnderWay, 'wishedEnd' | 'fitted'>;

interface HostActionsOptions {
  readonly commands: CommandsUnderWay;
  readonly status: Status;
  /** The end is asked about first: it is no place for a thumb that taps on. */
  readonly onFinish: () => void;
}

export function createHostActions({ commands, status, onFinish }: HostActionsOptions): HostActions {
  const just = (command: SentHostCommand): void => void commands.send(command);

  /** Says what was done; `undo` are the commands that take it back, in order. */
  async function done(
    command: SentHostCommand,
    said: string,
    ...undo: readonly SentHostCommand[]
  ): Promise<void> {
    if (!(await commands.send(command))) return;
    const takeBack = async (): Promise<void> => {
      for (const each of undo) if (!(await commands.send(each))) return;
    };
    if (undo.length === 0) status.say(said);
    else status.say(said, { action: { label: words.undo, onPress: () => void takeBack() } });
  }

  async function finishAfter(talked: readonly PourId[]): Promise<void> {
    // Refused, the evening goes on, and the host is told why: once it has ended nothing can be opened any more.
    if (talked.length > 0 && !(await commands.send({ type: 'OpenDiscussion', pours: talked }))) return;
    just({ type: 'Finish' });
  }

  return {
    takeStep(step) {
      status.clear();
      switch (step.does) {
        case 'advance':
          return just({ type: 'Advance', from: step.from });
        case 'open-discussion':
          return just({ type: 'OpenDiscussion', pours: step.pours });
        case 'reveal':
          return just({ type: 'Reveal', pours: step.pours, from: step.from });
        case 'tell-result':
          return just({ type: 'TellResult', cue: step.cue });
        case 'finish':
          return onFinish();
        default:
          return step satisfies never;
      }
    },
    back(from) {
      status.clear();
      just({ type: 'GoBack', from });
    },
    jump: (to, name, from) =>
      void done({ type: 'JumpTo', cue: to.id }, words.room.jump.done(name), {
        type: 'JumpTo',
        cue: from,
        takesBack: to.id,
      }),
    holdOrResume: (clock) => just({ type: clock.kind === 'held' ? 'Resume' : 'Hold' }),
    minute: () => just({ type: 'GiveTime', seconds: seconds(60) }),
    letStepsRun(run) {
      if (run) void done({ type: 'ChoosePacing', pacing: { by: 'steps' } }, words.room.steps.chosen);
      else just({ type: 'ChoosePacing', pacing: { by: 'host' } });
    },
    callBreak: (minutes, from) =>
      void done({ type: 'CallBreak', seconds: seconds(minutes * 60) }, words.pause.called(minutes), {
        type: 'JumpTo',
        cue: from,
      }),
    // The reminder itself stands on this page, with the button that takes it down.
    remind: (kind) => just({ type: 'Remind', kind }),
    openTalk(pours) {
      // “Closed”, with its undo, is not true any more.
      status.clear();
      just({ type: 'OpenDiscussion', pours });
    },
    closeTalk: (pours) =>
      void done({ type: 'CloseDiscussion', pours }, words.glasses.closedNow, {
        type: 'OpenDiscussion',
        pours,
      }),
    drop(pour, name, at) {
      // Dropping the glass in hand has moved the room on; taking that back leads to where it stood.
      const there =
        at !== undefined && pourOf(at) === pour.id ? [{ type: 'JumpTo', cue: at.id } as const] : [];
      void done(
        { type: 'DropPour', pour: pour.id },
        words.glasses.droppedNow(name),
        { type: 'RestorePour', pour: pour.id },
        ...there,
      );
    },
    swap: (pour, bottle, before, said) =>
      void done({ type: 'SwapBottle', pour, bottle }, said, { type: 'SwapBottle', pour, bottle: before }),
    mend: (pour, bottle, before, said) =>
      void done({ type: 'MendPour', pour, bottle }, said, { type: 'MendPour', pour, bottle: before }),
    mendTitle: (title, before, said) =>
      void done({ type: 'MendTitle', title }, said, { type: 'MendTitle', title: before }),
    addPour: (added, said) =>
      void done({ type: 'AddPour', ...added }, said, { type: 'DropPour', pour: added.pour }),
    reorder: (order, before, said) =>
      void done({ type: 'ReorderGlasses', order }, said, {
        type: 'ReorderGlasses',
        order: before.map(({ id }) => id),
      }),
    editCue: ({ id: cue, ideal, say = '' }, changes, said) =>
      void done({ type: 'EditCue', cue, ...changes }, said, {
        type: 'EditCue',
        cue,
        ...(changes.seconds === undefined ? {} : { seconds: ideal }),
        ...(changes.say === undefined ? {} : { say }),
      }),
    fit(endsAt, before, said) {
      const wished =
        before.wishedEnd === endsAt ? [] : [{ type: 'WishEnd', endsAt: before.wishedEnd } as const];
      const fitted =
        before.fitted && before.wishedEnd !== null
          ? [{ type: 'FitTo', endsAt: before.wishedEnd } as const]
          : [{ type: 'UndoFit' } as const, ...wished];
      void done({ type: 'FitTo', endsAt }, said, ...fitted);
    },
    dropClosing(at) {
      const inOne = at !== undefined && isClosing(at);
      void done(
        { type: 'DropClosingPass' },
        words.pace.closingDropped,
        { type: 'RestoreClosingPass' },
        ...(inOne ? [{ type: 'JumpTo', cue: at.id } as const] : []),
      );
    },
    shortenTalks: () =>
      void done({ type: 'ShortenDiscussions' }, words.pace.talksCut, { type: 'RestoreDiscussions' }),
    finish: (talked) => void finishAfter(talked),
    removeSeat: (seat, name) =>
      void done({ type: 'RemoveSeat', seat }, words.table.removed(name), { type: 'RestoreSeat', seat }),
    just,
  };
}
