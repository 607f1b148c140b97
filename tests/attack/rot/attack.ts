import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { seatId, type TastingId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { openSqliteStore, type SqliteStore } from '../../../server/store/sqlite.ts';
import { StoreFailure } from '../../../server/store/store.ts';
import type { ListedTasting } from '../../../shared/wire/http.ts';
import { credentials } from '../../server/support/device.ts';
import { House, houseKey } from '../../server/support/house.ts';
import { ManualClock } from '../../server/support/manual-clock.ts';
import type { StoredEvening } from '../../stored/evenings.ts';
import { layStore, releases } from '../../stored/releases.ts';
import { Chances } from '../chances.ts';
import { type Changed, changedIn, partOf, placeIn, type Rows, rowsOf } from './rows.ts';

export interface RotReport {
  flips: number;
  cuts: number;
  /** The file as a whole was refused, with a sentence. */
  refused: number;
  /** Evenings that were set aside or refused with a sentence. */
  setAside: number;
  /** Evenings that were opened and conducted on although the file had been harmed. */
  wentOn: number;
  /** Flips that SQLite's own check saw. */
  seenByCheck: number;
  /** Rows that read otherwise than they were stored, and of which the check told so. */
  told: number;
  /** What breaks the promise. */
  readonly faults: string[];
}

/** Rots copies of a store, one bit or one cut at a time, and looks what a server makes of each. */
export async function rot(flips: number, cuts: number, seed: number): Promise<RotReport> {
  const chances = new Chances(seed);
  const place = mkdtempSync(join(tmpdir(), 'rot-'));
  const report: RotReport = {
    flips,
    cuts,
    refused: 0,
    setAside: 0,
    wentOn: 0,
    seenByCheck: 0,
    told: 0,
    faults: [],
  };
  try {
    const sound = join(place, 'sound');
    mkdirSync(sound);
    const evenings = layStore(releases.at(-1) ?? '', sound);
    const before = await readWhole(join(sound, 'quietpour.db'), evenings);
    const rows = rowsOf(join(sound, 'quietpour.db'));
    for (let each = 0; each < flips; each += 1) {
      const folder = join(place, `flip-${each}`);
      cpSync(sound, folder, { recursive: true });
      // One of eight in the keys of the notebooks, or in the key that wraps them.
      const other = each % 16 === 7 ? 'quietpour.db.keys' : each % 16 === 15 ? 'notes.key' : undefined;
      const what = flipOne(folder, other, chances);
      // As a server opens it, and as a backup of one that does not run.
      await lookAt(folder, what, { evenings, before, rows, inThread: each % 2 === 0 }, report);
      rmSync(folder, { recursive: true });
    }
    for (let each = 0; each < cuts; each += 1) {
      const folder = join(place, `cut-${each}`);
      cpSync(sound, folder, { recursive: true });
      await cutOne(folder, evenings, chances, report);
      rmSync(folder, { recursive: true });
    }
    return report;
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}

interface Sound {
  readonly plan: string;
  readonly log: string;
  readonly notes: string;
}

interface Looked {
  readonly evenings: readonly StoredEvening[];
  readonly before: ReadonlyMap<TastingId, Sound>;
  readonly rows: Rows;
  readonly inThread: boolean;
}

/** Also brings the file up to date, so that each copy need not. */
async function readWhole(
  file: string,
  evenings: readonly StoredEvening[],
): Promise<ReadonlyMap<TastingId, Sound>> {
  const store = openSqliteStore(file);
  for (const { tasting, guests } of evenings.slice(-3))
    for (const { seat } of guests)
      await store.devices.keepWords(tasting, seatId(seat), {
        ...{ salt: Buffer.alloc(16, 1), hash: Buffer.alloc(32, 2) },
        wrong: [epochMs(1000)],
      });
  const read = evenings.map((evening) => [evening.tasting, soundOf(store, evening)] as const);
  await store.close();
  return new Map(read);
}

const soundOf = (store: SqliteStore, { tasting, guests }: StoredEvening): Sound => ({
  plan: JSON.stringify(store.tastings.find(tasting)?.plan),
  log: JSON.stringify(store.sessions.read(tasting)),
  notes: JSON.stringify(guests.map(({ seat }) => store.notebooks.read(tasting, seatId(seat)))),
});

function flipOne(folder: string, other: string | undefined, chances: Chances): string {
  const file = join(folder, other ?? 'quietpour.db');
  const bytes = readFileSync(file);
  const { table, at } =
    other === undefined ? placeIn(file, chances) : { table: other, at: chances.below(bytes.length) };
  const bit = chances.below(8);
  bytes.writeUInt8(bytes.readUInt8(at) ^ (1 << bit), at);
  writeFileSync(file, bytes);
  return `bit ${bit} of byte ${at} (${table})`;
}

async function lookAt(
  folder: string,
  what: string,
  { evenings, before, rows, inThread }: Looked,
  report: RotReport,
): Promise<void> {
  const file = join(folder, 'quietpour.db');
  const changed = changedIn(rows, rowsOf(file));
  let store: SqliteStore;
  try {
    store = openSqliteStore(file, { inThread });
  } catch (error) {
    if (error instanceof StoreFailure && /\w+ .*[.:]/.test(error.message)) report.refused += 1;
    else report.faults.push(`${what}: the file was refused without a sentence.`);
    return;
  }
  const damaged = store.check().length > 0;
  if (damaged) report.seenByCheck += 1;
  for (const { tasting } of evenings) store.lookThrough(tasting);
  const isTold = ({ table, tasting }: Changed): boolean =>
    damaged ||
    [...(store.tastings.altered().get(tasting as TastingId) ?? [])].some((part) =>
      partOf[table]?.includes(part),
    );
  if (changed === undefined && !damaged)
    report.faults.push(`${what}: a table cannot be read, and nobody is told.`);
  const silent = (changed ?? []).filter((row) => !isTold(row));
  report.told += (changed ?? []).length - silent.length;
  for (const { table } of silent)
    report.faults.push(`${what}: a row of ${table} has changed, and nobody is told.`);
  const shortened = new Map<StoredEvening, number>();
  for (const evening of evenings) {
    const { tasting, name } = evening;
    try {
      const now = soundOf(store, evening);
      const [log, whole] = [now.log, before.get(tasting)?.log ?? ''];
      // A row that has lost its place ends the log before it, as a cut does: whoever knew more is told below.
      if (isBeginning(log, whole)) shortened.set(evening, lengthOf(whole));
      else if (log !== whole) report.faults.push(`${what}: the log of "${name}" lies.`);
      const altered = store.tastings.altered().get(tasting);
      if (now.plan !== before.get(tasting)?.plan && altered?.has('plan') !== true)
        report.faults.push(`${what}: the plan of "${name}" lies.`);
      if (now.notes !== before.get(tasting)?.notes && altered?.has('notes') !== true && !damaged)
        report.faults.push(`${what}: notes of "${name}" are lost, and nobody is told.`);
    } catch (error) {
      if (!(error instanceof StoreFailure)) report.faults.push(`${what}: ${String(error)}`);
    }
  }
  const house = await House.open({ store, clock: new ManualClock() });
  try {
    await house.ask<ListedTasting[]>('GET', '/api/tastings', { key: houseKey });
    for (const [evening, length] of shortened)
      if ((await missingIn(house, evening, length).catch(() => 0)) === 0)
        report.faults.push(`${what}: nobody was told that the end of "${evening.name}" is lost.`);
    let broken = 0;
    for (const evening of evenings) if (!(await goesOn(house, evening, what, report))) broken += 1;
    report.setAside += broken;
    report.wentOn += evenings.length - broken;
  } catch (error) {
    report.faults.push(`${what}: ${error instanceof Error ? error.message : 'the server fell over'}`);
  } finally {
    await house.close().catch(() => report.faults.push(`${what}: the server could not be stopped.`));
  }
}

const isBeginning = (log: string, whole: string): boolean =>
  log !== whole && log !== '[]' && whole.startsWith(`${log.slice(0, -1)},`);

const lengthOf = (log: string): number => (JSON.parse(log) as readonly unknown[]).length;

/** How many events a device that knew this many is told to be missing [F7]; rejects where it is refused or told nothing. */
async function missingIn(house: House, evening: StoredEvening, known: number): Promise<number> {
  const host = await house.enter({ ...credentials('host', evening.tasting, evening.hostKey), known });
  return (await host.until('lost-end')).missing;
}

/** Whether it is conducted on; refused with a sentence it is not, and anything else is a fault. */
async function goesOn(
  house: House,
  evening: StoredEvening,
  what: string,
  report: RotReport,
): Promise<boolean> {
  try {
    const host = await house.host(evening);
    await host.level();
    const ask =
      evening.stands === 'planned'
        ? { type: 'OpenDoors' }
        : evening.stands === 'under-way'
          ? { type: 'GiveTime', seconds: 30 }
          : { type: 'Reopen' };
    const answer = await host.host(ask);
    host.close();
    return answer.ok;
  } catch (refused) {
    const said = (refused as { readonly message?: unknown }).message;
    if (typeof said !== 'string' || !/\w+ \w+/.test(said))
      report.faults.push(`${what}: "${evening.name}" was refused without a sentence.`);
    return false;
  }
}

/** Takes a stretch out of a log: from its middle it is told by what is left, at its end by what a device knows. */
async function cutOne(
  folder: string,
  evenings: readonly StoredEvening[],
  chances: Chances,
  report: RotReport,
): Promise<void> {
  const file = join(folder, 'quietpour.db');
  const evening = chances.anyOf(evenings.filter(({ stands }) => stands !== 'planned'));
  if (evening === undefined) throw new Error('No evening has a log.');
  const db = new SqliteDatabase(file);
  const length = Number(
    db.prepare('SELECT max(seq) FROM events WHERE tasting = ?').pluck().get(evening.tasting),
  );
  const from = 2 + chances.below(length - 2);
  const to = Math.min(length, from + chances.below(5));
  db.prepare('DELETE FROM events WHERE tasting = ? AND seq BETWEEN ? AND ?').run(evening.tasting, from, to);
  db.close();
  const what = `"${evening.name}" without events ${from} to ${to} of ${length}`;
  const house = await House.open({ store: openSqliteStore(file), clock: new ManualClock() });
  try {
    const told = await missingIn(house, evening, length).catch(
      (refused: { readonly code?: string }) => refused.code,
    );
    if (told !== (to < length ? 'set-aside' : length - from + 1))
      report.faults.push(`${what}: it was told ${told}.`);
    for (const other of evenings.filter((each) => each !== evening))
      if (!(await goesOn(house, other, what, report)))
        report.faults.push(`${what}: "${other.name}" did not go on.`);
  } finally {
    await house.close();
  }
}
