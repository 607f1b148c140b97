import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { followAsGuest, type GuestFollower } from '../../shared/follower/guest-follower.ts';
import { after } from '../../shared/follower/timer.ts';
import { watchForWake } from '../../shared/follower/wake-watch.ts';
import { type KeptSeat, keepSeat } from '../../shared/seats/kept-seats.ts';
import { newCommandId } from '../../shared/seats/new-id.ts';
import { createStatus, type Status } from '../../shared/ui/status.ts';
import type { SentGuestCommand } from '../../shared/wire/commands.ts';
import type { DeviceAsk } from '../../shared/wire/devices.ts';
import type { DeviceAck } from '../../shared/wire/protocol.ts';
import type { Consents } from '../../shared/wire/sharing.ts';
import type { PourId } from '../../shared/wire/views.ts';
import { keepsThings, noteKeep, sitTab } from '../page/device-storage.ts';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { keepStage } from './stage-storage.ts';
import { createWritingLock, type WritingLock } from './writing-lock.ts';

/** What the guest looks at: the room, or something of their own until the room moves. */
type Page =
  | { readonly at: 'room' }
  | { readonly at: 'notes'; readonly pour: PourId | null }
  | { readonly at: 'my-seat' }
  | { readonly at: 'keepsake' };

/** One guest's evening on this device. */
export interface Room {
  readonly seat: Signal<KeptSeat>;
  /** False where the device remembers nothing once the page is closed. */
  readonly deviceKeeps: boolean;
  readonly follower: GuestFollower;
  readonly lock: WritingLock;
  readonly status: Status;
  readonly page: Signal<Page>;
  /** Glasses whose talk is open and of which this guest has not said yet what goes to the table. */
  readonly asked: ReadonlySignal<readonly PourId[]>;
  /** Asks, and says in a sentence why not. @returns whether it was done */
  ask(ask: SentGuestCommand): Promise<boolean>;
  /** As `ask`, for what becomes of these pages. */
  consent(pours: readonly PourId[], consents: Consents): Promise<boolean>;
  readCautions(): void;
  /** Keeps something about this seat on this device. */
  remember(changes: Partial<KeptSeat>): void;
  /** As `ask`, about the devices of the seat. @returns what was answered, undefined when it was not done */
  askAboutDevices(ask: DeviceAsk): Promise<Extract<DeviceAck, { ok: true }> | undefined>;
  close(): void;
}

export function openRoom(pass: KeptSeat): Room {
  const seat = signal(pass);
  const follower = followAsGuest({
    tasting: pass.tasting,
    key: pass.key,
    keep: noteKeep(pass),
    newId: newCommandId,
  });
  const lock = createWritingLock({ now: () => performance.now(), after });
  const status = createStatus();
  const page = signal<Page>({ at: 'room' });
  const place = computed(() => placeOf(lock.shown.value));

  const asked = computed(() => {
    const stage = lock.shown.value;
    if (
      stage?.status !== 'under-way' ||
      !follower.consentsTold.value ||
      follower.devices.value?.opens === false
    )
      return [];
    const given = follower.consents.value;
    const trials = follower.seat.value?.trials ?? [];
    return stage.openBoards.filter(
      (pour) => given.get(pour)?.page === undefined && trials.every(({ id }) => id !== pour),
    );
  });
  let askedBefore = '';

  const remember = (changes: Partial<KeptSeat>): void => {
    seat.value = { ...seat.peek(), ...changes };
    keepSeat(seat.peek());
    sitTab(seat.peek());
  };

  const flushWhenLeaving = (): void => {
    if (document.visibilityState === 'hidden') follower.notebook.flush();
  };
  document.addEventListener('visibilitychange', flushWhenLeaving);
  const endings = [
    effect(() => lock.follow(follower.stage.value)),
    effect(() => {
      const title = follower.stage.value?.title ?? null;
      if (title !== null && title !== '' && seat.peek().title !== title) remember({ title });
    }),
    effect(() => {
      // The room has moved and so does the screen, from whatever the guest was reading.
      if (place.value !== null) page.value = { at: 'room' };
    }),
    effect(() => {
      // Once, when there is something to ask and nobody is typing: from then on they may look at what they like.
      const now = asked.value.join();
      if (lock.writing.value || now === askedBefore) return;
      askedBefore = now;
      if (now !== '') page.value = { at: 'room' };
    }),
    effect(() => {
      const stage = follower.stage.value;
      const own = follower.seat.value;
      if (stage !== null && own !== null) keepStage(pass, { stage, own });
    }),
    effect(() => {
      // [C5] Told when there is a line, however long after they were read.
      const own = follower.seat.value;
      const tells = own?.cautionsRead === false && own.presence === 'seated' && seat.value.cautioned;
      if (tells) void follower.send({ type: 'ReadCautions' });
    }),
    watchForWake(follower.wake),
    () => document.removeEventListener('visibilitychange', flushWhenLeaving),
    lock.close,
    follower.close,
  ];

  return {
    seat,
    deviceKeeps: keepsThings(),
    follower,
    lock,
    status,
    page,
    asked,
    async ask(ask) {
      const answer = await follower.send(ask);
      // The room has gone on, or it is so already: nothing that a person has to do.
      if (answer.ok || answer.code === 'moved-on' || answer.code === 'nothing-to-do') return answer.ok;
      status.say(refusalSentence(answer.code));
      return false;
    },
    async consent(pours, consents) {
      const answer = await follower.consent(pours, consents);
      if (!answer.ok) status.say(refusalSentence(answer.code));
      return answer.ok;
    },
    readCautions: () => remember({ cautioned: true }),
    remember,
    async askAboutDevices(ask) {
      const answer = await follower.askAboutDevices(ask);
      if (answer.ok) return answer;
      if (answer.code !== 'nothing-to-do') status.say(refusalSentence(answer.code));
      return undefined;
    },
    close() {
      for (const end of endings) end();
    },
  };
}

const placeOf = (stage: WritingLock['shown']['value']): string | null =>
  stage?.status === 'under-way' ? stage.cue.id : (stage?.status ?? null);

/** Whether this device of a seat at home shows the call and nothing else. */
export const isCallOnly = ({ follower, seat }: Room): boolean =>
  seat.value.callOnly === true &&
  seat.value.cautioned &&
  follower.seat.value?.remote === true &&
  follower.seat.value.presence === 'seated' &&
  follower.link.value.status !== 'refused';

export const RoomContext = createContext<Room | null>(null);

export function useRoom(): Room {
  const room = useContext(RoomContext);
  if (room === null) throw new Error('There is no room around this part of the page.');
  return room;
}
