import { computed, type ReadonlySignal, signal } from '@preact/signals-core';
import type { CommandId, PourId } from '../../core/ids.ts';
import { type NoAnswer, passesByItself } from '../wire/answer.ts';
import type { ConsentGiving, NotebookView } from '../wire/notebook.ts';
import type { CommandAnswer } from '../wire/protocol.ts';
import type { Consents } from '../wire/sharing.ts';
import type { After } from './timer.ts';

/** What this guest has answered about their pages [Q2]: a choice moves at once, and is sent until it is answered. */
export interface GuestConsents {
  /** What the guest wants, and where nothing is under way, what the server has. */
  readonly given: ReadonlySignal<ReadonlyMap<PourId, Consents>>;
  /** Whether the server has told what it has: before, nobody knows what was answered. */
  readonly told: ReadonlySignal<boolean>;
  /** Settles with the first answer, or with none; in that case it goes on asking. */
  give(pours: readonly PourId[], consents: Consents): Promise<CommandAnswer | NoAnswer>;
  /** Takes in what the server has. It tells this before it answers a request, so that an answer by itself says nothing. */
  level(view: Pick<NotebookView, 'consents'>): void;
  /** Asks no more. */
  close(): void;
}

export interface GuestConsentsOptions {
  readonly send: (giving: ConsentGiving) => Promise<CommandAnswer | NoAnswer>;
  readonly newId: () => CommandId;
  readonly after: After;
}

/** After a send that nobody answered, in ms. */
const retry = 3000;

export function createConsents({ send, newId, after }: GuestConsentsOptions): GuestConsents {
  const known = signal<ReadonlyMap<PourId, Consents> | undefined>(undefined);
  /** In the order in which they were given. */
  const wanted = signal<readonly ConsentGiving[]>([]);
  /** One at a time: two on their way at once could arrive in the other order. */
  let underWay: Promise<unknown> = Promise.resolve();

  const replace = (giving: ConsentGiving, ...by: readonly ConsentGiving[]): void => {
    wanted.value = wanted.peek().flatMap((each) => (each === giving ? by : [each]));
  };

  /** Asked again just as it was: with the same id it cannot undo what another device did in between. */
  async function once(giving: ConsentGiving): Promise<CommandAnswer | NoAnswer> {
    const answer = await send(giving);
    if (answer.ok || !passesByItself(answer.code)) replace(giving);
    else after(retry, () => void again(giving));
    return answer;
  }

  /** But not for what the guest has answered anew meanwhile. */
  async function again(giving: ConsentGiving): Promise<void> {
    const at = wanted.peek().indexOf(giving);
    if (at < 0) return;
    const newer = wanted.peek().slice(at + 1);
    const pours = giving.pours.filter((pour) => !newer.some((each) => overrules(each, giving, pour)));
    if (pours.length === giving.pours.length) return void (await inTurn(giving));
    if (pours.length === 0) return replace(giving);
    const rest = { ...giving, id: newId(), pours };
    replace(giving, rest);
    await inTurn(rest);
  }

  function inTurn(giving: ConsentGiving): Promise<CommandAnswer | NoAnswer> {
    const turn = underWay.then(() => once(giving));
    underWay = turn;
    return turn;
  }

  return {
    given: computed(() => {
      const all = new Map(known.value ?? []);
      for (const { pours, consents } of wanted.value) {
        for (const pour of pours) all.set(pour, { ...all.get(pour), ...consents });
      }
      return all;
    }),
    told: computed(() => known.value !== undefined),
    give(pours, consents) {
      const giving: ConsentGiving = { id: newId(), pours: [...pours], consents };
      wanted.value = [...wanted.peek(), giving];
      return inTurn(giving);
    },
    level(view) {
      known.value = new Map(view.consents.map(({ pour, consents }) => [pour, consents]));
    },
    close() {
      wanted.value = [];
    },
  };
}

const overrules = (newer: ConsentGiving, older: ConsentGiving, pour: PourId): boolean =>
  newer.pours.includes(pour) && Object.keys(older.consents).every((about) => about in newer.consents);
