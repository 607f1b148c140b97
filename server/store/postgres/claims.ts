import { type TastingId, tastingId } from '../../../core/ids.ts';
import type { MachineTime } from '../../clock.ts';
import { StoreFailure } from '../store.ts';
import type { Ask } from './connections.ts';
import { databaseFailure } from './failure.ts';
import type { Lease } from './lease.ts';

/** Where a session is conducted. */
export type Whereabouts = { readonly at: 'here' } | Elsewhere | { readonly at: 'nowhere' };

export interface Elsewhere {
  readonly at: 'elsewhere';
  readonly address: string;
  readonly process: string;
}

/** What is known of the head of a session that is owned here. */
export interface OwnHead {
  readonly epoch: number;
  version: number;
  /** When somebody last asked for it here; ms of the steady clock. */
  usedAt: number;
}

export interface ClaimParts {
  readonly ask: Ask;
  readonly time: MachineTime;
  readonly lease: () => Lease;
  /** Reads all of it into memory. */
  readonly load: (tasting: TastingId) => Promise<void>;
  readonly unload: (tasting: TastingId) => void;
  /** Whether something of it is on its way to the database. */
  readonly writing: (tasting: TastingId) => boolean;
}

export interface ClaimFigures {
  taken: number;
  lost: number;
  released: number;
  gaveAway: number;
  /** Ms that the last one taken needed until it was read whole. */
  takeMs: number;
}

/** Ms after which a session that was read for taking it over, and was not taken, is forgotten again. */
const preparedFor = 10_000;

/** Ms for which a session counts as just having left: whoever was let in for it before has come in or given up by then. */
const justFor = 30_000;

/** Sessions looked after in one sweep: each is a whole evening to read. */
const atOnce = 8;

const alive = 'SELECT FROM processes p WHERE p.process = %s AND p.valid_until > clock_timestamp()';
const ownerIsAlive = alive.replace('%s', 'h.owner');
/** Whether the owner is gone: it has given up by itself, or its lease has run out while all could renew theirs. */
const ownerIsGone = ({ mayTakeOver }: Lease): string =>
  mayTakeOver
    ? `NOT EXISTS (${ownerIsAlive})`
    : 'NOT EXISTS (SELECT FROM processes p WHERE p.process = h.owner)';

/** The sessions that are this process's own. Who owns one is a row in the database, and to claim it one update of that row. */
export class Claims {
  readonly owned = new Map<TastingId, OwnHead>();
  readonly figures: ClaimFigures = { taken: 0, lost: 0, released: 0, gaveAway: 0, takeMs: 0 };
  readonly #parts: ClaimParts;
  readonly #claiming = new Map<TastingId, Promise<Whereabouts>>();
  /** Read while another conducts them, and at which version. */
  readonly #prepared = new Map<TastingId, number>();
  /** Until when each counts as just having left, by the steady clock. */
  readonly #left = new Map<TastingId, number>();
  #draining = false;
  #onLost: (tasting: TastingId) => void = () => undefined;
  #onTaken: (tasting: TastingId) => void = () => undefined;

  constructor(parts: ClaimParts) {
    this.#parts = parts;
  }

  watch(lost: (tasting: TastingId) => void, taken: (tasting: TastingId) => void): void {
    this.#onLost = lost;
    this.#onTaken = taken;
  }

  /** @param refusing a process whose port refuses: it is gone, and its lease need not be waited for */
  claim(tasting: TastingId, refusing = ''): Promise<Whereabouts> {
    const own = this.owned.get(tasting);
    if (own !== undefined) {
      own.usedAt = this.#parts.time.steady();
      if (this.#parts.lease().holds()) return Promise.resolve({ at: 'here' });
      return Promise.reject(new StoreFailure('This process has no lease at the moment.'));
    }
    const known = this.#claiming.get(tasting);
    if (known !== undefined) return known;
    const claiming = this.#claim(tasting, refusing).finally(() => this.#claiming.delete(tasting));
    this.#claiming.set(tasting, claiming);
    return claiming;
  }

  /** From now on nothing more is claimed here: whoever asks for what nobody has is told of another process. */
  drain(): void {
    this.#draining = true;
  }

  /** The other processes that live, in any order. */
  async others(): Promise<readonly Elsewhere[]> {
    const { ask, lease } = this.#parts;
    const rows = await ask<{ process: string; address: string }>(
      `SELECT process, address FROM processes
       WHERE process <> $1 AND address <> '' AND valid_until > clock_timestamp() ORDER BY random()`,
      [lease().process],
    );
    return rows.map((each) => ({ at: 'elsewhere', ...each }));
  }

  /** Reads a session that another conducts, so that to take it costs no reading. False when it is not to be had here. */
  async prepare(tasting: TastingId): Promise<boolean> {
    const { ask, time, lease, load, unload } = this.#parts;
    if (this.#draining || !lease().mayOwn || this.owned.has(tasting)) return false;
    const [head] = await ask<{ version: number }>('SELECT version FROM heads WHERE tasting = $1', [tasting]);
    if (head === undefined) return false;
    await load(tasting);
    this.#prepared.set(tasting, head.version);
    time.after(preparedFor, () => {
      if (this.#prepared.delete(tasting) && !this.owned.has(tasting)) unload(tasting);
    });
    return true;
  }

  /** One update, with its owner's leave: it has said its last word of this session. */
  async takeFrom(owner: string, tasting: TastingId): Promise<boolean> {
    const { ask, lease } = this.#parts;
    if (this.#draining || !lease().mayOwn || this.#claiming.has(tasting)) return false;
    const taking = (async (): Promise<Whereabouts> => {
      const [mine] = await ask<{ epoch: number; version: number }>(
        `UPDATE heads h SET owner = $2, epoch = epoch + 1
         WHERE h.tasting = $1 AND h.owner = $3 AND EXISTS (${alive.replace('%s', '$2')})
         RETURNING epoch, version`,
        [tasting, lease().process, owner],
      );
      return mine === undefined ? { at: 'nowhere' } : this.#take(tasting, mine);
    })().finally(() => this.#claiming.delete(tasting));
    this.#claiming.set(tasting, taking);
    if ((await taking).at !== 'here') return false;
    this.#onTaken(tasting);
    return true;
  }

  /** Another has taken it. */
  gaveAway(tasting: TastingId): void {
    if (!this.owned.has(tasting)) return;
    this.figures.gaveAway += 1;
    this.#letGo(tasting);
  }

  /** Whether it was here until a moment ago: a key that opens nothing here may open it where it is now. */
  justLeft(tasting: TastingId): boolean {
    return !this.owned.has(tasting) && (this.#left.get(tasting) ?? 0) > this.#parts.time.steady();
  }

  #letGo(tasting: TastingId): void {
    const now = this.#parts.time.steady();
    for (const [each, until] of this.#left) if (until <= now) this.#left.delete(each);
    this.#left.set(tasting, now + justFor);
    this.owned.delete(tasting);
    this.#parts.unload(tasting);
  }

  async #claim(tasting: TastingId, refusing: string): Promise<Whereabouts> {
    const { ask, lease } = this.#parts;
    const { process } = lease();
    try {
      if (lease().mayOwn && !this.#draining) {
        const [mine] = await ask<{ epoch: number; version: number }>(
          `UPDATE heads h SET owner = $2, epoch = epoch + 1
           WHERE h.tasting = $1 AND EXISTS (${alive.replace('%s', '$2')})
             AND (h.owner IS NULL OR h.owner = $2 OR h.owner = $3 OR ${ownerIsGone(lease())})
           RETURNING epoch, version`,
          [tasting, process, refusing],
        );
        if (mine !== undefined) return await this.#take(tasting, mine);
      }
      const [other] = await ask<{ owner: string | null; address: string | null }>(
        'SELECT h.owner, p.address FROM heads h LEFT JOIN processes p ON p.process = h.owner WHERE h.tasting = $1',
        [tasting],
      );
      if (other === undefined) return { at: 'nowhere' };
      if (this.#draining && (other.address === null || other.owner === process)) {
        const [another] = await this.others();
        if (another !== undefined) return another;
      }
      if (other.owner === null || other.address === null || other.owner === process)
        throw new StoreFailure('Nobody conducts this evening at the moment.');
      return { at: 'elsewhere', address: other.address, process: other.owner };
    } catch (error) {
      throw databaseFailure(error);
    }
  }

  async #take(tasting: TastingId, head: Omit<OwnHead, 'usedAt'>): Promise<Whereabouts> {
    const began = this.#parts.time.steady();
    // What was read before holds as long as nothing was committed since.
    if (this.#prepared.get(tasting) !== head.version) await this.#parts.load(tasting);
    this.#prepared.delete(tasting);
    this.owned.set(tasting, { ...head, usedAt: this.#parts.time.steady() });
    this.figures.taken += 1;
    this.figures.takeMs = Math.round(this.#parts.time.steady() - began);
    return { at: 'here' };
  }

  /** Sessions under way whose owner is gone begin again here, whether or not anybody asks for them: their clock goes on. */
  async sweep(): Promise<void> {
    const { ask, lease } = this.#parts;
    if (!lease().mayOwn || this.#draining) return;
    const rows = await ask<{ tasting: string }>(
      `SELECT h.tasting FROM heads h JOIN summaries s USING (tasting)
       WHERE h.owner IS NOT NULL AND h.owner <> $1 AND s.stage = 'under-way'
         AND ${ownerIsGone(lease())}
       ORDER BY random() LIMIT ${atOnce}`,
      [lease().process],
    );
    for (const { tasting } of rows) {
      // One that cannot be read keeps no other waiting; whoever asks for it is told.
      try {
        const { at } = await this.claim(tastingId(tasting));
        if (at === 'here') this.#onTaken(tastingId(tasting));
      } catch {}
    }
  }

  /**
   * Gives up what nobody has asked for in these ms and nobody conducts: its memory is freed, and whoever is asked for it next
   * has it. Should it be claimed here once more meanwhile, its epoch is another one, and it stays.
   */
  async releaseIdle(idleFor: number, conducted: (tasting: TastingId) => boolean): Promise<void> {
    const { ask, time, lease, writing } = this.#parts;
    const idle = [...this.owned].filter(
      ([tasting, { usedAt }]) => time.steady() - usedAt > idleFor && !conducted(tasting) && !writing(tasting),
    );
    if (idle.length === 0) return;
    for (const [tasting] of idle) this.#letGo(tasting);
    this.figures.released += idle.length;
    await ask(
      `UPDATE heads h SET owner = NULL FROM unnest($2::text[], $3::bigint[]) AS d(tasting, epoch)
       WHERE h.tasting = d.tasting AND h.epoch = d.epoch AND h.owner = $1`,
      [lease().process, idle.map(([tasting]) => tasting), idle.map(([, { epoch }]) => epoch)],
    );
  }

  /** What somebody has deleted beside this process, with a whole house for example, goes from memory as well. */
  async loseDeleted(): Promise<void> {
    const kept = [...this.owned.keys()].filter((tasting) => !this.#parts.writing(tasting));
    if (kept.length === 0) return;
    const rows = await this.#parts.ask<{ tasting: string }>(
      `SELECT tasting FROM unnest($1::text[]) o(tasting)
       WHERE NOT EXISTS (SELECT FROM heads h WHERE h.tasting = o.tasting)`,
      [kept],
    );
    for (const { tasting } of rows) this.lose(tastingId(tasting));
  }

  /** After a time without a lease: what another process has meanwhile is given up, before anything more is said of it. */
  async check(): Promise<void> {
    if (this.owned.size === 0) return;
    const rows = await this.#parts.ask<{ tasting: string; epoch: number }>(
      'SELECT tasting, epoch FROM heads WHERE owner = $1',
      [this.#parts.lease().process],
    );
    const now = new Map(rows.map(({ tasting, epoch }) => [tastingId(tasting), epoch]));
    for (const [tasting, { epoch }] of this.owned) if (now.get(tasting) !== epoch) this.lose(tasting);
  }

  /** It is another's: nothing more is said of it here. */
  lose(tasting: TastingId): void {
    if (!this.owned.has(tasting)) return;
    this.figures.lost += 1;
    // Its conductor asks what is owned no more.
    this.owned.delete(tasting);
    this.#onLost(tasting);
    this.#letGo(tasting);
  }
}
