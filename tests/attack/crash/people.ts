import { nanoid } from 'nanoid';
import { type CommandId, commandId, type PourId, type SeatId, type TastingId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { type Connection, connect } from '../../../shared/follower/connection.ts';
import { after } from '../../../shared/follower/timer.ts';
import { type TextField, textFields } from '../../../shared/notes/entry.ts';
import type { SentHostCommand } from '../../../shared/wire/commands.ts';
import type { CommandAnswer, Credentials } from '../../../shared/wire/protocol.ts';
import type { Chances } from '../chances.ts';
import type { Ledger, Page } from './ledger.ts';

const newId = (): CommandId => commandId(nanoid());
const pause = (ms: number): Promise<void> => new Promise((resolve) => after(ms, resolve));
/** A field is left for the next before it is full. */
const fullAt = 3500;

export interface Door {
  readonly origin: string;
  readonly tasting: TastingId;
}

function connected({ origin, tasting }: Door, role: Credentials['role'], key: string): Connection {
  return connect(role, { origin, tasting, key });
}

/** Walks through the running order, round and round, as fast as it is answered. */
export class CrashHost {
  readonly connection: Connection;
  readonly #ledger: Ledger;

  constructor(door: Door, key: string, ledger: Ledger) {
    this.connection = connected(door, 'host', key);
    this.#ledger = ledger;
  }

  /** Asks again with the same id until somebody answers. */
  async ask(ask: SentHostCommand, id = newId()): Promise<CommandAnswer> {
    for (;;) {
      const answer = await this.connection.ask('host:ask', { id, ask });
      if (answer.ok || answer.code !== 'no-answer') return answer;
    }
  }

  async goTo(cue: Cue): Promise<void> {
    await this.#step(cue, { type: 'JumpTo', cue: cue.id });
  }

  async walk(cues: readonly Cue[], chances: Chances, goesOn: () => boolean): Promise<void> {
    let at = cues.length;
    while (goesOn()) {
      const [here, next] = [cues[at], cues[at + 1]];
      if (here === undefined || next === undefined) {
        at = 0;
        if (cues[0] !== undefined) await this.goTo(cues[0]);
      } else {
        await this.#step(next, { type: 'Advance', from: here.id });
        at += 1;
      }
      await pause(chances.between(60, 120));
    }
  }

  async #step(to: Cue, ask: SentHostCommand): Promise<void> {
    const id = newId();
    const answer = await this.ask(ask, id);
    if (!answer.ok) throw new Error(`The step to ${to.id} was refused: ${answer.code}.`);
    this.#ledger.steps.push({ id, cue: to.id, answer });
  }
}

/** Writes line after line, each on top of what was acknowledged before. */
export class CrashGuest {
  readonly connection: Connection;
  readonly #seat: SeatId;
  readonly #ledger: Ledger;

  constructor(door: Door, key: string, seat: SeatId, ledger: Ledger) {
    this.connection = connected(door, 'guest', key);
    this.#seat = seat;
    this.#ledger = ledger;
  }

  async write(pours: readonly PourId[], chances: Chances, goesOn: () => boolean): Promise<void> {
    for (const pour of pours) {
      for (const field of textFields) {
        const page: Page = { seat: this.#seat, pour, field, acknowledged: [] };
        this.#ledger.pages.push(page);
        let value = '';
        while (value.length < fullAt) {
          if (!goesOn()) return;
          value = `${value}${value === '' ? '' : '\n'}${page.acknowledged.length + 1}`;
          page.acknowledged.push(await this.#save(pour, field, value, page.acknowledged.length));
          await pause(chances.between(60, 120));
        }
      }
    }
  }

  /** Answers with what the server says it has. */
  async #save(pour: PourId, field: TextField, value: string, base: number): Promise<string> {
    const id = newId();
    for (;;) {
      const answer = await this.connection.ask('note:save', { id, pour, field, value, base });
      if (answer.ok) return String(answer.value);
      if (answer.code !== 'no-answer') throw new Error(`A note was refused: ${answer.code}.`);
    }
  }
}
