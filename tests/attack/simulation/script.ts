import { type CueId, cueId, type PourId, type SeatId } from '../../../core/ids.ts';
import type { Pacing } from '../../../core/tasting.ts';
import { seconds } from '../../../core/units.ts';
import { textFields } from '../../../shared/notes/entry.ts';
import type { SentHostCommand } from '../../../shared/wire/commands.ts';
import type { Room } from './device.ts';
import type { GuestDevice, HostDevice } from './people.ts';

export interface Cast {
  readonly hosts: readonly [HostDevice, HostDevice];
  readonly guests: readonly [GuestDevice, ...GuestDevice[]];
}

/** How often each thing happens in an evening. */
const weights = {
  advance: 22,
  hostElse: 16,
  discuss: 8,
  pacing: 3,
  seats: 2,
  write: 40,
  share: 9,
  signal: 12,
  weather: 9,
  reload: 3,
  kill: 3,
  disk: 4,
  quiet: 4,
} as const;

/** Does one thing, and says what for the one who reads a failure. Chosen by chance alone, so that a seed tells all. */
export function act(room: Room, cast: Cast): string {
  const { chances } = room;
  const what = chances.weighed(weights);
  const host = chances.oneOf(cast.hosts);
  const guest = chances.oneOf(cast.guests);
  switch (what) {
    case 'advance':
      return ask(host, { type: 'Advance', from: cueOf(host) });
    case 'hostElse':
      return ask(host, anyOther(room, host));
    case 'discuss':
      return ask(host, anyTalk(room, host));
    case 'pacing':
      return ask(host, anyPacing(room));
    case 'seats':
      return ask(host, anyAboutSeats(room, guest.seat));
    case 'write':
      return write(room, guest);
    case 'share': {
      const pour = anyReached(room, guest);
      if (pour === undefined) return 'nothing to share';
      guest.share(pour, chances.oneOf(['named', 'named', 'private', 'unnamed']));
      return `${guest.device.name} shares`;
    }
    case 'signal':
      return signal(room, guest);
    case 'weather':
      return weather(room, chances.oneOf<HostDevice | GuestDevice>([host, guest]));
    case 'reload': {
      const device = chances.oneOf<HostDevice | GuestDevice>([host, guest]);
      if (!('seat' in device) || device.follower !== undefined) device.reload();
      return `${device.device.name} reloads`;
    }
    case 'kill':
      room.house.kill();
      room.time.after(chances.oneOf([5, 500, 5000, 90_000]) * chances.between(0.5, 1.5), () =>
        room.house.start(),
      );
      return 'the server is killed';
    case 'disk':
      room.house.disk.health = chances.oneOf(['slow', 'refusing', 'flickering']);
      room.time.after(chances.between(100, 8000), () => {
        room.house.disk.health = 'well';
      });
      return `the disk is ${room.house.disk.health}`;
    case 'quiet':
      return 'nothing';
    default:
      return what satisfies never;
  }
}

function ask(host: HostDevice, what: SentHostCommand): string {
  host.ask(what);
  return `${host.device.name} asks ${JSON.stringify(what)}`;
}

/** As that device knows it, which may be long ago. */
function cueOf(host: HostDevice): CueId {
  const view = host.follower.view.peek();
  return view?.status === 'under-way' ? view.cue : cueId('gathering');
}

function anyOther({ chances }: Room, host: HostDevice): SentHostCommand {
  const pour = chances.anyOf(host.follower.view.peek()?.pours ?? [])?.id;
  const what = chances.weighed({
    GoBack: 3,
    JumpTo: 3,
    Hold: 3,
    Resume: 4,
    GiveTime: 3,
    CallBreak: 1,
    Remind: 2,
    DropPour: 1,
    RestorePour: 2,
    EditCue: 1,
    Finish: 0.4,
    Reopen: 1,
  });
  const cues = host.follower.runningOrder.peek()?.cues ?? [];
  const cue = chances.anyOf(cues)?.id ?? cueId('gathering');
  switch (what) {
    case 'GoBack':
      return { type: what, from: cueOf(host) };
    case 'JumpTo':
      return { type: what, cue };
    case 'GiveTime':
      return { type: what, seconds: seconds(5 + chances.below(90)) };
    case 'CallBreak':
      return { type: what, seconds: seconds(30 + chances.below(90)) };
    case 'EditCue':
      return { type: what, cue, seconds: seconds(5 + chances.below(60)) };
    case 'Remind':
      return { type: what, kind: chances.oneOf(['water', 'spit', 'quiet', 'nudge']) };
    case 'DropPour':
    case 'RestorePour':
      return pour === undefined ? { type: 'Hold' } : { type: what, pour };
    case 'Hold':
    case 'Resume':
    case 'Finish':
    case 'Reopen':
      return { type: what };
    default:
      return what satisfies never;
  }
}

function anyTalk({ chances }: Room, host: HostDevice): SentHostCommand {
  const pour = chances.anyOf(host.follower.view.peek()?.pours ?? [])?.id;
  if (pour === undefined) return { type: 'OpenDoors' };
  return {
    type: chances.oneOf(['OpenDiscussion', 'OpenDiscussion', 'CloseDiscussion', 'Reveal']),
    pours: [pour],
  };
}

function anyPacing({ chances }: Room): SentHostCommand {
  if (chances.happens(0.2)) return { type: 'WaitForRemote', wait: chances.happens(0.5) };
  return {
    type: 'ChoosePacing',
    pacing: chances.oneOf<Pacing>([
      { by: 'host' },
      { by: 'clock' },
      { by: 'clock' },
      { by: 'room', share: 0.6 },
    ]),
  };
}

function anyAboutSeats({ chances }: Room, seat: SeatId): SentHostCommand {
  if (chances.happens(0.2)) return { type: 'SetDoors', doors: chances.oneOf(['open', 'ask']) };
  return {
    type: chances.oneOf([
      'AdmitSeat',
      'RemoveSeat',
      'RestoreSeat',
      'RestoreSeat',
      'AnswerSeat',
      'StopPouring',
      'ResumePouring',
    ]),
    seat,
  };
}

/** A glass that this guest has had in front of them, as their own phone knows it. */
function anyReached({ chances }: Room, guest: GuestDevice): PourId | undefined {
  return chances.anyOf(guest.stage?.glasses.flatMap((glass) => glass.pour?.id ?? []) ?? []);
}

function write(room: Room, guest: GuestDevice): string {
  const pour = anyReached(room, guest);
  if (pour === undefined) return 'nothing to write about';
  const mark = `qz${room.history.marks.size}zq`;
  guest.write(pour, room.chances.oneOf([textFields[0], textFields[1]]), mark);
  return `${guest.device.name} writes ${mark} of ${pour}`;
}

function signal({ chances }: Room, guest: GuestDevice): string {
  const { stage } = guest;
  if (stage?.status !== 'under-way') return 'nothing to say';
  guest.ask({
    type: 'GiveSignal',
    signal: chances.oneOf(['ready', 'ready', 'more-time', 'needs-host', null]),
    cue: stage.cue.id,
  });
  return `${guest.device.name} says how it goes`;
}

function weather({ chances, time }: Room, { device }: HostDevice | GuestDevice): string {
  if (chances.happens(0.4)) {
    device.weather.delay = chances.oneOf([1, 5, 15, 70, 400]);
    return `${device.name} is ${device.weather.delay} ms away`;
  }
  device.weather.cut = true;
  time.after(chances.oneOf([200, 3000, 30_000]) * chances.between(0.5, 1.5), () => {
    device.weather.cut = false;
  });
  return `${device.name} is cut off`;
}
