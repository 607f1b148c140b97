import { cueId, tastingId } from '../../../core/ids.ts';
import { planOf } from '../../support/plans.ts';
import { Chances } from '../chances.ts';
import { VirtualTime } from '../virtual-time.ts';
import { checkLevel, checkStages } from './checks/level.ts';
import { checkLog, standings } from './checks/log.ts';
import { checkNotes } from './checks/notes.ts';
import { idsFrom, type Planted, type Room } from './device.ts';
import { Disk } from './disk.ts';
import { diskStore } from './disk-store.ts';
import { History } from './history.ts';
import { House } from './house.ts';
import { GuestDevice, HostDevice } from './people.ts';
import { bentBy } from './planted.ts';
import { act, type Cast } from './script.ts';

export interface Simulated {
  readonly seed: number;
  readonly ops: number;
  /** What was broken; empty when every rule held. */
  readonly faults: readonly string[];
  readonly events: number;
  readonly marks: number;
  readonly boots: number;
  /** Everything that was done, with its time in ms. */
  readonly told: readonly string[];
}

/**
 * One evening from one seed: the server's own conductor, publisher and gateway and the devices' own followers, over
 * a simulated disk, network and clocks, in virtual time. The same seed and number of operations give the same evening.
 */
export async function simulate(seed: number, ops: number, planted: Planted = {}): Promise<Simulated> {
  const time = new VirtualTime();
  const chances = new Chances(seed);
  const plan = planOf(2, { level: 'newcomers', discussion: 'each-pour', practice: false });
  const disk = new Disk(time, chances, tastingId('simulated'), plan);
  disk.forgetful = planted.forgetsAnswers ?? false;
  const house = new House(time, disk, bentBy(planted));
  const history = new History(disk);
  const room: Room = {
    time,
    chances,
    house,
    history,
    planted,
    newId: idsFrom(seed),
    wild: chances.happens(0.5),
  };
  house.start();
  const cast: Cast = {
    hosts: [new HostDevice(room, 'tablet'), new HostDevice(room, 'spare')],
    guests: [
      new GuestDevice(room, 'noor', 'seat-noor'),
      new GuestDevice(room, 'noor-laptop', 'seat-noor'),
      new GuestDevice(room, 'tomas', 'seat-tomas'),
      new GuestDevice(room, 'ilse', 'seat-ilse'),
    ],
  };
  await time.pass(1000);
  cast.hosts[0].ask({ type: 'OpenDoors' });
  cast.guests.forEach((guest, index) => {
    time.after(1000 + index * chances.exponential(20_000), () => void guest.arrive(index === 3));
  });
  await time.pass(5000);
  cast.hosts[0].ask({ type: 'JumpTo', cue: cueId(`${plan.pours[0]?.id}/first/look`) });

  const told: string[] = [];
  for (let op = 0; op < ops; op += 1) {
    await time.pass(chances.exponential(chances.oneOf([30, 400, 400, 2000, 15_000])));
    told.push(`${Math.round(time.now)} ${act(room, cast)}`);
  }
  await becomeCalm(room, cast);
  const after = standings(disk.events);
  checkLog(history, house, after);
  checkStages(history, after);
  const last = after.at(-1);
  if (last !== undefined) {
    const store = diskStore(disk, { on: true }, 0, house.now);
    checkLevel(history, last, store, disk.tasting, cast);
  }
  checkNotes(history, disk, cast.guests);
  for (const line of new Set(house.logged)) history.fault('log', line);
  return {
    seed,
    ops,
    faults: history.faults,
    events: disk.events.length,
    marks: history.marks.size,
    boots: house.lives.length,
    told,
  };
}

/** The faults end; whoever was sent away may come back; and after a while everybody must be level. */
async function becomeCalm({ time, house, wild }: Room, { hosts, guests }: Cast): Promise<void> {
  house.disk.health = 'well';
  house.start();
  for (const { device } of [...hosts, ...guests])
    Object.assign(device.weather, { cut: false, wild: false, delay: 10 });
  await time.pass(30_000);
  for (const host of hosts) if (host.refused) host.reload();
  await time.pass(15_000);
  const [host] = hosts;
  host.ask({ type: 'Reopen' });
  await time.pass(1000);
  host.ask({ type: 'Hold' });
  for (const guest of guests) {
    host.ask({ type: 'RestoreSeat', seat: guest.seat });
    await time.pass(1000);
    host.ask({ type: 'AdmitSeat', seat: guest.seat });
    await time.pass(1000);
    if (guest.refused) guest.reload();
  }
  await time.pass(40_000);
  if (!wild) return;
  // Views were lost or overtaken without a connection being lost: one message after a gap must do.
  house.kill();
  house.start();
  await time.pass(40_000);
}
