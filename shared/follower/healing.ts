import type { After } from './timer.ts';

/** Ms after which an attempt that hears nothing is given up: first, how much more each time, and at most. */
const patience = { first: 1200, more: 400, most: 2000 };
/** The same where the server answers, has never been reached, and for each fourth: the line may only be slow. */
const slowPatience = 5000;
/** Devices that lost the line together come back apart: each pause is varied by this much of it, either way. */
const apart = 0.2;
/** Between two looks, and how long one waits. */
const lookEvery = 1000;
/** Between attempts that are turned down: full jitter, as in Brooker, "Exponential backoff and jitter" (AWS, 2015). */
const turnedDown = { least: 300, most: 10_000 };
/** An attempt that fails later than this was not turned down: nobody was there to do it. */
const quickly = 1000;

export interface HealingOptions {
  /** Begins an attempt; one that is under way is given up. */
  readonly attempt: () => void;
  /** A small request to the server; whether it was answered within so many ms. */
  readonly look: (within: number) => Promise<boolean>;
  /** An attempt came to nothing although the server answers requests: this way in may be blocked. */
  readonly onBlocked?: (() => void) | undefined;
  readonly now: () => number;
  readonly after: After;
  /** From 0 to 1. */
  readonly chance: () => number;
}

/** Finds the way back to a server, soon after there is one and without storming a server that starts. */
export interface Healing {
  /** An attempt was begun by somebody else, the first of all. */
  begun(): void;
  /** The line is gone: nothing was heard any more, or somebody hung up. */
  lost(how: 'silence' | 'hung-up'): void;
  /** An attempt has failed by itself. */
  failed(): void;
  /** At once: the device woke, or its network is back. */
  hurry(): void;
  /** Level again, or never to be. */
  stop(): void;
}

export function createHealing({ attempt, look, onBlocked, now, after, chance }: HealingOptions): Healing {
  /** Attempts since the line was lost, and how many of the last ones were turned down. */
  let attempts = 0;
  let refusals = 0;
  let attemptAt: number | undefined;
  /** The server has answered since the attempt began. */
  let answers = false;
  let looking = false;
  /** What is under way ends with the loss that it was begun for. */
  let loss = 0;
  let cancelAttempt = (): void => undefined;
  let cancelLook = (): void => undefined;

  const varied = (ms: number): number => ms * (1 + apart * (2 * chance() - 1));

  function wait(limit: number): void {
    cancelAttempt();
    cancelAttempt = after(limit, silent);
  }

  function begin(server: 'answers' | 'unknown'): void {
    cancelAttempt();
    attempts += 1;
    attemptAt = now();
    answers = server === 'answers';
    const limit = Math.min(patience.most, patience.first + patience.more * (attempts - 1));
    wait(answers || attempts % 4 === 0 ? slowPatience : varied(limit));
    attempt();
  }

  function silent(): void {
    if (answers) onBlocked?.();
    begin('unknown');
    lookOn();
  }

  function lookOn(): void {
    if (looking) return;
    looking = true;
    const mine = loss;
    const once = async (): Promise<void> => {
      const sentAt = now();
      const answered = await look(lookEvery).catch(() => false);
      if (mine !== loss || !looking) return;
      cancelLook = after(Math.max(0, sentAt + varied(lookEvery) - now()), () => void once());
      if (!answered || answers) return;
      // What was sent before this look may have been lost in the silence.
      if (attemptAt === undefined || attemptAt < sentAt) begin('answers');
      else {
        answers = true;
        wait(slowPatience);
      }
    };
    cancelLook = after(varied(lookEvery) / 2, () => void once());
  }

  function lookNoMore(): void {
    looking = false;
    cancelLook();
  }

  function stop(): void {
    loss += 1;
    attempts = 0;
    refusals = 0;
    attemptAt = undefined;
    answers = false;
    cancelAttempt();
    lookNoMore();
  }

  /** Requests of any kind stop meanwhile. */
  function beginLater(): void {
    lookNoMore();
    attemptAt = undefined;
    refusals += 1;
    const longest = Math.min(turnedDown.most, turnedDown.least * 2 ** refusals);
    cancelAttempt();
    cancelAttempt = after(turnedDown.least + chance() * (longest - turnedDown.least), () => begin('unknown'));
  }

  return {
    begun() {
      attempts = 1;
      attemptAt = now();
      wait(slowPatience);
    },
    lost(how) {
      stop();
      if (how === 'hung-up') beginLater();
      else {
        begin('unknown');
        lookOn();
      }
    },
    failed() {
      if (attemptAt !== undefined && now() - attemptAt > quickly) {
        refusals = 0;
        begin('unknown');
        lookOn();
      } else beginLater();
    },
    hurry() {
      refusals = 0;
      if (attemptAt === undefined || now() - attemptAt > quickly / 4) begin('unknown');
    },
    stop,
  };
}
