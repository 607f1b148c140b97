import { startPostgres } from '../support/postgres-server.ts';
import { type Child, startChild } from './child.ts';
import { type Figure, median, quantile } from './figures.ts';
import { measureSessions, speed } from './sessions.ts';

interface Listening {
  readonly port: number;
  readonly houseKey: string;
}
interface Delivery {
  readonly p50: number;
  readonly p99: number;
  /** Of all processes that have to do with it, for one guest and one tap; ms. */
  readonly cpuMs: number;
}

/** What is to be served. */
const wanted = { guests: 100_000, sessions: 5000 };
/** A process is full when its one loop is busy for this share of the time: what is above is for a crowd that comes back. */
const full = 0.5;

/**
 * The same evening through its owner, through a process that passes on, and on a file; events a second; and what a public
 * service would need, reckoned from that.
 */
export async function measureCluster(
  guests: number,
  sessions: number,
  seconds: number,
  rounds: number,
): Promise<Figure[]> {
  const postgres = await startPostgres(true);
  const children: Child[] = [];
  const child = (name: string): Child => {
    const started = startChild(name);
    children.push(started);
    return started;
  };
  try {
    const database = await postgres.database();
    const [file, owner, passing] = [child('our-server'), child('our-server'), child('our-server')];
    const onFile = await file.ask<Listening>('listen');
    const atOwner = await owner.ask<Listening>('listen', { database });
    const atPassing = await passing.ask<Listening>('listen', { database });
    const ways = {
      'on a file': await delivered([file], child('crowd'), onFile, { guests, rounds }),
      'through its owner': await delivered([owner], child('crowd'), atOwner, { guests, rounds }),
      'through a process that passes on': await delivered(
        [owner, passing],
        child('crowd'),
        { ...atPassing, owner: atOwner.port },
        { guests, rounds },
      ),
    };
    await Promise.all(children.splice(0).map((each) => each.stop()));
    const appends = async (where: object) =>
      child('our-server').ask<number>('appends', { evenings: 64, seconds: Math.min(10, seconds), ...where });
    const [onDisk, inPostgres] = [await appends({}), await appends({ database: await postgres.database() })];
    await Promise.all(children.splice(0).map((each) => each.stop()));
    const many = await measureSessions({
      sessions,
      guests: 20,
      seconds,
      database: await postgres.database(),
    });
    const need = needOf(many, seconds, inPostgres);
    console.log(need.arithmetic);
    return [
      ...Object.entries(ways).flatMap(([way, { p50, p99, cpuMs }]) => [
        { name: `tap to the last of ${guests} guests, ${way}, p50`, value: p50, unit: 'ms' },
        { name: `the same, p99`, value: p99, unit: 'ms' },
        { name: `server time for each delivery, ${way}`, value: cpuMs * 1000, unit: 'µs' },
      ]),
      { name: 'events a second, 64 evenings at once, on a file', value: onDisk, unit: 'events' },
      { name: 'the same in PostgreSQL', value: inPostgres, unit: 'events' },
      { name: 'sessions of 20 guests for each process', value: need.perProcess, unit: 'sessions' },
      {
        name: `processes for ${wanted.guests.toLocaleString('en')} guests in ${wanted.sessions.toLocaleString('en')} sessions`,
        value: need.processes,
        unit: 'processes',
      },
    ];
  } finally {
    await Promise.all(children.map((each) => each.stop()));
    await postgres.stop();
  }
}

async function delivered(
  servers: readonly Child[],
  crowd: Child,
  at: Listening & { readonly owner?: number },
  { guests, rounds }: { readonly guests: number; readonly rounds: number },
): Promise<Delivery> {
  const used = async (): Promise<number> => {
    const all = await Promise.all(servers.map((each) => each.ask<number>('worked')));
    return all.reduce((sum, ms) => sum + ms, 0);
  };
  await crowd.ask('warmOurs', {
    port: at.owner ?? at.port,
    houseKey: at.houseKey,
    guests: Math.min(guests, 100),
  });
  await crowd.ask('joinOurs', { ...at, guests });
  await crowd.ask('toStart');
  // The first ones warm it up.
  for (let round = 0; round < 2; round += 1) await crowd.ask('tapOurs');
  const before = await used();
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1)
    times.push((await crowd.ask<{ ms: number }>('tapOurs', { guests })).ms);
  const cpuMs = ((await used()) - before) / (rounds * guests);
  return { p50: median(times), p99: quantile(times, 0.99), cpuMs };
}

interface Need {
  readonly perProcess: number;
  readonly processes: number;
  /** In words, so that whoever has other figures can reckon again. */
  readonly arithmetic: string;
}

/** @param run of sessions of 20 guests; @param capacity events a second that the database takes from one process */
export function needOf(
  run: {
    readonly sessions: number;
    readonly busy: number;
    readonly turned: number;
    readonly bytesPerGuest: number;
  },
  seconds: number,
  capacity: number,
): Need {
  const each = run.busy / (run.sessions * speed);
  const perProcess = Math.floor(full / each);
  const processes = Math.ceil(wanted.sessions / perProcess);
  const turnsOf = run.turned / (run.sessions * seconds * speed);
  const events = turnsOf * wanted.sessions;
  const gigabytes = (wanted.guests * run.bytesPerGuest) / 2 ** 30;
  const lines = [
    `  ${run.sessions} sessions of 20 guests at ${speed} times real speed take ${run.busy.toFixed(3)} of a processor:`,
    `    ${run.busy.toFixed(3)} / (${run.sessions} x ${speed}) = ${(each * 1e6).toFixed(1)} millionths for one evening.`,
    `  A process is full at ${full}: ${full} / ${(each * 1e6).toFixed(1)} millionths = ${perProcess} evenings.`,
    `  ${wanted.sessions} / ${perProcess} = ${processes} processes at the least, and one more for each machine that may fall.`,
    `  Turns: ${run.turned} / (${run.sessions} x ${seconds} s x ${speed}) x ${wanted.sessions} = ${events.toFixed(0)} events a second, of ${capacity.toFixed(0)} that one process commits.`,
    `  Memory: ${wanted.guests} x ${(run.bytesPerGuest / 1024).toFixed(1)} KiB = ${gigabytes.toFixed(1)} GiB over all processes.`,
    '  Left out: notes (a commit each, some for each guest and glass), signals, and the time to come back after a fall.',
  ];
  return { perProcess, processes, arithmetic: lines.join('\n') };
}
