import { type CommandId, type PourId, type SeatId, seatId } from '../../../core/ids.ts';
import type { StageView } from '../../../core/session/views/stage.ts';
import { followAsGuest, type GuestFollower } from '../../../shared/follower/guest-follower.ts';
import { followAsHost, type HostFollower } from '../../../shared/follower/host-follower.ts';
import { entryKey } from '../../../shared/follower/notebook.ts';
import type { TextField } from '../../../shared/notes/entry.ts';
import type { SentGuestCommand, SentHostCommand } from '../../../shared/wire/commands.ts';
import { pageParts, type Sharing } from '../../../shared/wire/sharing.ts';
import { Device, type Page, type Room } from './device.ts';
import type { Asked } from './history.ts';
import { hostKey } from './house.ts';

/** A device of the host, with a page that follows and asks. */
export class HostDevice {
  readonly device: Device;
  readonly #room: Room;
  #page: Page;
  #follower: HostFollower;
  #lastId: CommandId | undefined;

  constructor(room: Room, name: string) {
    this.#room = room;
    this.device = new Device(room, name);
    [this.#page, this.#follower] = this.#open();
  }

  get follower(): HostFollower {
    return this.#follower;
  }
  get refused(): boolean {
    const { status } = this.#follower.link.peek();
    return status === 'refused' || status === 'dismissed';
  }

  ask(ask: SentHostCommand): void {
    void this.#follower.send(ask);
    if (this.#lastId !== undefined) this.#room.history.asked.set(` ${this.#lastId}`, ask as Asked);
  }

  reload(): void {
    this.#page.end();
    this.#follower.close();
    [this.#page, this.#follower] = this.#open();
  }

  #open(): [Page, HostFollower] {
    const { house, history, newId } = this.#room;
    const page = this.device.open();
    const follower = followAsHost({
      tasting: house.disk.tasting,
      key: hostKey,
      newId: () => {
        this.#lastId = newId();
        return this.#lastId;
      },
      local: page.local,
      after: page.after,
      open: page.open,
    });
    follower.view.subscribe((view) => view && history.shows(page.name, 'host', view.version, view));
    follower.runningOrder.subscribe((order) => {
      if (order !== null) history.shows(page.name, 'running-order', order.version, order);
    });
    follower.board.subscribe((board) => board && history.shows(page.name, 'board', board.version, board));
    return [page, follower];
  }
}

/** A device of a guest. Two of them may hold the same seat. */
export class GuestDevice {
  readonly device: Device;
  readonly seat: SeatId;
  readonly key: string;
  readonly #room: Room;
  #page: Page | undefined;
  #follower: GuestFollower | undefined;
  #lastId: CommandId | undefined;

  constructor(room: Room, name: string, seat: string) {
    this.#room = room;
    this.seat = seatId(seat);
    this.key = `the-key-that-${seat}-made-0123456789`;
    this.device = new Device(room, name, this.seat);
  }

  /** Undefined until the guest has taken a seat. */
  get follower(): GuestFollower | undefined {
    return this.#follower;
  }
  get refused(): boolean {
    const status = this.#follower?.link.peek().status;
    return status === 'refused' || status === 'dismissed';
  }
  get stage(): StageView | null {
    return this.#follower?.stage.peek() ?? null;
  }

  /** Asks for a seat until it is given, and follows from then on. The key is the device's own, so asking again is safe. */
  async arrive(remote: boolean): Promise<void> {
    const { time, chances, house, newId } = this.#room;
    const id = newId();
    const pause = (ms: number): Promise<void> => new Promise((resolve) => time.after(ms, resolve));
    for (;;) {
      await pause(this.device.weather.delay);
      const asked = this.device.weather.cut ? false : this.#askedSeat(id, remote);
      const answer = await Promise.race([asked, pause(5000).then(() => false)]);
      await pause(this.device.weather.delay);
      if (answer && house.life !== undefined) return this.reload();
      await pause(chances.between(1000, 3000));
    }
  }

  ask(ask: SentGuestCommand): void {
    void this.#follower?.send(ask);
    if (this.#lastId !== undefined)
      this.#room.history.asked.set(` ${this.seat}/${this.#lastId}`, ask as Asked);
  }

  /** Adds a line of its own to what stands there. */
  write(pour: PourId, field: TextField, mark: string): void {
    const notebook = this.#follower?.notebook;
    if (notebook === undefined) return;
    this.#room.history.marks.set(mark, { mark, seat: this.seat, pour, field });
    const stands = notebook.entries.peek().get(entryKey(pour, field))?.value ?? '';
    notebook.write(pour, field, stands === '' ? mark : `${stands}\n${mark}`);
  }

  share(pour: PourId, sharing: Sharing): void {
    if (sharing !== 'private') this.#room.history.everShared.add(`${this.seat} ${pour}`);
    const parts = sharing === 'private' ? [] : pageParts;
    void this.#follower?.consent([pour], { page: { sharing, parts } });
  }

  reload(): void {
    this.#page?.end();
    this.#follower?.close();
    const { house, history, newId, planted } = this.#room;
    const page = this.device.open();
    const open: Page['open'] = (credentials) => {
      const socket = page.open(credentials);
      if (planted.goesBack) socket.on('seat', (view) => history.shows(page.name, 'seat', view.version, view));
      return socket;
    };
    const follower = followAsGuest({
      tasting: house.disk.tasting,
      key: this.key,
      keep: page.keep,
      newId: () => {
        this.#lastId = newId();
        return this.#lastId;
      },
      local: page.local,
      after: page.after,
      open,
    });
    this.#page = page;
    this.#follower = follower;
    follower.stage.subscribe((view) => view && history.shows(page.name, 'stage', view.version, view));
    follower.seat.subscribe((view) => view && history.shows(page.name, 'seat', view.version, view));
    follower.board.subscribe((view) => view && history.shows(page.name, 'board', view.version, view));
  }

  #askedSeat(id: CommandId, remote: boolean): Promise<boolean> {
    const { house } = this.#room;
    return house.takeSeat(id, this.seat, this.device.name, this.key, remote);
  }
}
