import { seededRandom } from '../../support/seeded-random.ts';
import { type EveningOptions, pours, WatchedEvening } from './evening.ts';
import { type Finding, Ledger } from './ledger.ts';

export interface SecretsReport {
  readonly evenings: number;
  readonly notes: number;
  readonly messages: number;
  readonly bytes: number;
  /** Words of others that were rightly on a board. */
  readonly aloud: number;
  readonly findings: readonly Finding[];
}

export interface SecretsOptions {
  /** How many notes are written in all, in evenings of at most 500. */
  readonly notes: number;
  readonly seed: number;
  readonly guests?: number;
  readonly plant?: EveningOptions['plant'];
}

const perEvening = 500;

/** [Q1] [Q2] Plays random evenings and looks for every guest's words wherever they must not be. */
export async function seekSecrets(options: SecretsOptions): Promise<SecretsReport> {
  const { notes, seed, guests = 8, plant } = options;
  const report = { evenings: 0, notes: 0, messages: 0, bytes: 0, aloud: 0, findings: [] as Finding[] };
  while (report.notes < notes) {
    const ledger = new Ledger();
    const random = seededRandom(seed + report.evenings);
    const evening = await WatchedEvening.begin({
      ledger,
      random,
      guests,
      ...(plant === undefined ? {} : { plant }),
    });
    try {
      const enough = Math.min(perEvening, notes - report.notes);
      while (ledger.written < enough) await someTurns(evening, random);
      await evening.look();
      await evening.fetchAll();
      // Only then is there a recap.
      await evening.host({ type: 'Finish' });
      await evening.fetchAll();
      await evening.look();
    } finally {
      await evening.end();
    }
    report.evenings += 1;
    report.notes += ledger.written;
    report.messages += ledger.looked.messages;
    report.bytes += ledger.looked.bytes;
    report.aloud += ledger.aloud;
    report.findings.push(...ledger.findings);
  }
  return report;
}

/** A handful of things in any order, then a look at all that was said. */
async function someTurns(evening: WatchedEvening, random: () => number): Promise<void> {
  for (let turn = 0; turn < 12; turn += 1) {
    const seated = evening.people.filter(({ removed }) => !removed);
    const person = evening.pick(seated);
    if (person === undefined) return;
    if (random() < 0.75) await evening.write(person);
    else await somethingElse(evening, person, random);
  }
  await evening.look();
  if (random() < 0.1) await evening.fetchAll();
}

async function somethingElse(
  evening: WatchedEvening,
  person: WatchedEvening['people'][number],
  random: () => number,
): Promise<void> {
  const which = random();
  if (which < 0.2) return evening.share(person);
  if (which < 0.3) return evening.blunder(person);
  if (which < 0.5) return moveOn(evening, random);
  if (which < 0.6) return reconnect(evening, person);
  if (which < 0.65) return void (person.devices.length < 3 && (await evening.enterGuest(person)));
  if (which < 0.72) return void (evening.people.length < 30 && (await evening.sitDown()));
  if (which < 0.8) return removeOrRestore(evening, person);
  if (which < 0.86) return hostComesAndGoes(evening);
  if (which < 0.9) return void (evening.screens.length < 3 && (await evening.enterScreen()));
  if (which < 0.96) return void (await evening.host({ type: 'Remind', kind: 'water' }));
  await evening.host({ type: 'CloseDiscussion', pours: [evening.pick(pours)] });
}

/** On by one, to anywhere, or straight into a discussion. */
async function moveOn(evening: WatchedEvening, random: () => number): Promise<void> {
  const view = evening.hosts[0]?.last('host');
  const cues = evening.hosts[0]?.last('running-order')?.cues ?? [];
  const which = random();
  if (which < 0.4) await evening.host({ type: 'OpenDiscussion', pours: [evening.pick(pours)] });
  else if (which < 0.6) await evening.host({ type: 'JumpTo', cue: evening.pick(cues)?.id });
  else if (view?.status === 'under-way') await evening.host({ type: 'Advance', from: view.cue });
}

async function reconnect(evening: WatchedEvening, person: WatchedEvening['people'][number]): Promise<void> {
  const device = evening.pick(person.devices);
  if (device === undefined) return;
  await evening.leaveTheWire(device, person.devices);
  await evening.enterGuest(person);
}

async function removeOrRestore(
  evening: WatchedEvening,
  person: WatchedEvening['people'][number],
): Promise<void> {
  const gone = evening.people.find(({ removed }) => removed);
  if (gone !== undefined) {
    await evening.host({ type: 'RestoreSeat', seat: gone.seat });
    gone.removed = false;
    await evening.enterGuest(gone);
    return;
  }
  await evening.host({ type: 'RemoveSeat', seat: person.seat });
  for (const device of person.devices) await device.dismissed();
  person.devices = [];
  person.removed = true;
}

async function hostComesAndGoes(evening: WatchedEvening): Promise<void> {
  if (evening.hosts.length < 3) return evening.enterHost();
  const [, second] = evening.hosts;
  if (second !== undefined) await evening.leaveTheWire(second, evening.hosts);
}
