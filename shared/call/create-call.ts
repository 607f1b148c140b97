import { computed, effect, signal, untracked } from '@preact/signals-core';
import {
  type CallScene,
  type CallWishes,
  callGates,
  hears,
  isSilent,
  largePicture,
  noWishes,
  wishesAfter,
} from '../../core/call/call-gates.ts';
import { type PeerId, peerId } from '../../core/ids.ts';
import { newCommandId } from '../seats/new-id.ts';
import type { CallPeer, CallShown, CallView } from '../wire/call.ts';
import type { Call, CallEvening, CallPlace, WhyOut } from './call.ts';
import { type CallOutcome, callCommands } from './call-commands.ts';
import type { LineMeasure, Received } from './call-media.ts';
import { tooPoorForPictures } from './low-data.ts';
import { createMesh, type Mesh } from './mesh.ts';
import { createOwnMedia } from './own-media.ts';

/** Ms after a line has come back in which nobody is missed: others come back too, and their pictures go on [V6]. */
const settling = 8000;
const measureEvery = 2000;
/** Ms in which somebody who joins is let wait for their turn. */
const longestJoining = 10_000;

export function createCall(evening: CallEvening, media = createOwnMedia()): Call {
  const { socket, role, seat, scene, turn, raised } = evening;
  const place = signal<CallPlace>({ at: 'out', why: null });
  const view = signal<CallView>({ peers: [] });
  const wishes = signal<CallWishes>(noWishes);
  const pressed = signal(false);
  const voiceOnly = signal<'no' | 'wished' | 'poor-line'>('no');
  const received = signal<ReadonlyMap<PeerId, Received>>(new Map());
  let mesh: Mesh | null = null;
  let unfollow: () => void = () => undefined;
  let settled = true;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const own = (): PeerId | null => {
    const { value } = place;
    return value.at === 'in' ? value.own : null;
  };
  const handRaised = computed(() => seat !== null && raised.value.has(seat));
  const gates = computed(() =>
    callGates({
      scene: scene.value,
      role,
      wishes: wishes.value,
      myTurn: seat !== null && turn.value === seat,
      handRaised: handRaised.value,
      pressed: pressed.value,
    }),
  );
  const others = computed(() => view.value.peers.filter(({ peer }) => peer !== own()));
  const speaks = (peer: CallPeer) => ({
    role: peer.role,
    handRaised: peer.seat !== null && raised.value.has(peer.seat),
  });
  // [V1] Beside a television that plays to the same room the tablet is silent, but for who speaks to the host alone.
  const playedByScreen = (peer: CallPeer): boolean =>
    role === 'host' &&
    !isSilent(scene.value) &&
    peer.role === 'guest' &&
    others.value.some((other) => other.role === 'screen');
  const mayBeHeard = (peer: CallPeer): boolean => hears(scene.value, role, speaks(peer));
  const plays = (peer: CallPeer): boolean => mayBeHeard(peer) && !playedByScreen(peer);
  const shown = computed<CallShown>(() => {
    const { microphone, camera } = media.tracks.value;
    return {
      microphone: gates.value.microphone === 'all' && microphone !== null,
      camera: gates.value.camera && camera !== null,
      voiceOnly: voiceOnly.value !== 'no' || gates.value.pictures !== 'shown',
    };
  });

  const { send, insist } = callCommands(socket);
  const end = (why: WhyOut | null): void => {
    mesh?.close();
    unfollow();
    mesh = null;
    received.value = new Map();
    clearTimeout(timer);
    wishes.value = { ...noWishes, atMyTurn: false };
    pressed.value = false;
    media.release('microphone');
    media.release('camera');
    place.value = { at: 'out', why };
  };

  /** Who is not there any more is gone at once; right after a line has broken they get time to come back. */
  const subscribe = (): void => {
    const now = others.peek();
    const alive = [...received.peek()].filter(([, { state }]) => state === 'connected').map(([peer]) => peer);
    const missed = known.filter(
      ({ peer }) => alive.includes(peer) && now.every((each) => each.peer !== peer),
    );
    known = settled ? now : [...now, ...missed];
    mesh?.subscribe(known);
  };
  let known: readonly CallPeer[] = [];
  const hear = (next: CallView): void => {
    const id = own();
    view.value = next;
    if (id === null) return;
    if (next.peers.some(({ peer }) => peer === id)) subscribe();
    else if (settled) end(isElsewhere() ? 'elsewhere' : 'sent-away');
  };
  /** Another device of the same seat, or another tablet of the host, has the place in the call. */
  const isElsewhere = (): boolean =>
    role !== 'screen' && others.peek().some((each) => each.role === role && each.seat === seat);
  const joinAs = (peer: PeerId, wanted: () => boolean): Promise<CallOutcome> =>
    insist({ type: 'Join', peer, as: role === 'room' ? 'room' : 'self', shown: shown.peek() }, wanted);
  /** Else the others would go on seeing this device in the call. Whoever joins anew takes the old place themselves. */
  const sayLeft = (): void => {
    if (place.peek().at === 'in') void insist({ type: 'Leave' }, () => place.peek().at === 'out');
  };

  /**
   * A line that has come back: who is in the call is told anew, and this device takes its own place again, unless another one
   * has it by now.
   */
  const comeBack = (): void => {
    const id = own();
    if (id === null) return void insist({ type: 'Watch' }, () => place.peek().at === 'out');
    settled = false;
    clearTimeout(timer);
    timer = setTimeout(() => {
      settled = true;
      hear(view.peek());
    }, settling);
    const isIn = (): boolean => own() === id;
    const retaken = insist({ type: 'Watch' }, isIn).then((told) => {
      if (told.ok && isIn() && isElsewhere()) end('elsewhere');
      return told.ok && isIn() ? joinAs(id, isIn) : told;
    });
    void retaken.then((answer) => {
      if (!answer.ok && answer.code !== 'no-answer' && answer.code !== 'too-fast') end(answer.code);
      else mesh?.mend();
    });
  };

  socket.on('connect', comeBack);
  socket.on('call', hear);
  const onSignal: Parameters<typeof socket.on<'call-signal'>>[1] = ({ from, signal: said }) =>
    mesh?.take(from, said);
  socket.on('call-signal', onSignal);
  if (socket.connected) comeBack();

  let before: CallScene | null = null;
  const endings = [
    effect(() => {
      const now = scene.value;
      // At the cue's moment, and before anything else is sent.
      untracked(() => {
        wishes.value = wishesAfter(wishes.peek(), before, now, role);
        pressed.value = false;
        if (now !== 'rest' || before === 'rest') return;
        media.release('microphone');
        media.release('camera');
      });
      before = now;
    }),
    effect(() => {
      const { microphone, camera } = media.tracks.value;
      const { microphone: to, camera: films } = gates.value;
      // Closed twice: the track is silent, and nothing of it is put into any line.
      if (microphone !== null) microphone.enabled = to !== 'nobody';
      if (camera !== null) camera.enabled = films && voiceOnly.value === 'no';
      const inCall = place.value.at === 'in';
      untracked(() => {
        if (!inCall || mesh === null) return;
        mesh.publish({
          microphone,
          camera,
          hears: (peer) => to === 'all' || (to === 'host' && peer.role === 'host'),
          sees: (peer) => films && voiceOnly.peek() === 'no' && !peer.voiceOnly,
        });
        // [V4] Said so tonight, and given before: at one's turn it comes by itself.
        if (to !== 'nobody' && microphone === null) void media.open('microphone');
      });
    }),
    effect(() => {
      const { microphone, camera } = media.failures.value;
      untracked(() => {
        // It is off; connected again it waits for a tap.
        if (microphone === 'unplugged') wishes.value = { ...wishes.peek(), microphone: false };
        if (camera === 'unplugged') wishes.value = { ...wishes.peek(), camera: false };
      });
    }),
    effect(() => {
      const now = shown.value;
      const latest = (): boolean => place.peek().at === 'in' && shown.peek() === now;
      if (place.value.at === 'in') void insist({ type: 'Show', shown: now }, latest);
    }),
  ];
  const measures: LineMeasure[] = [];
  const measuring = setInterval(() => {
    if (mesh === null || voiceOnly.peek() !== 'no') return;
    void mesh.measure().then((measure) => {
      measures.push(measure);
      if (!tooPoorForPictures(measures)) return;
      measures.length = 0;
      if (voiceOnly.peek() === 'no') voiceOnly.value = 'poor-line';
    });
  }, measureEvery);

  return {
    place,
    role,
    others,
    received,
    gates,
    large: computed(() => largePicture(others.value, turn.value)),
    wishes,
    media,
    voiceOnly,
    mayBeHeard,
    plays,
    isOpen: (peer) => peer.microphone && mayBeHeard(peer),
    loudness: (peer) => mesh?.loudness(peer) ?? 0,
    async join() {
      if (place.peek().at !== 'out') return;
      // Nobody is to see somebody come who can neither send nor hear.
      if (!('RTCPeerConnection' in globalThis)) {
        place.value = { at: 'out', why: 'no-webrtc' };
        return;
      }
      place.value = { at: 'joining' };
      const id = peerId(newCommandId());
      const until = performance.now() + longestJoining;
      const answer = await joinAs(id, () => place.peek().at === 'joining' && performance.now() < until);
      if (place.peek().at !== 'joining') return;
      if (!answer.ok) {
        place.value = { at: 'out', why: answer.code };
        return;
      }
      mesh = createMesh({
        own: id,
        servers: answer.servers ?? [],
        send: (to, said) => void send({ type: 'Signal', to, signal: said }),
      });
      const { received: coming } = mesh;
      unfollow = effect(() => {
        received.value = coming.value;
      });
      settled = true;
      place.value = { at: 'in', own: id };
      hear(view.peek());
    },
    leave() {
      sayLeft();
      end(null);
    },
    async turnOn(device, on) {
      if (on && !(gates.peek().mayOpen[device] && (await media.open(device)))) return;
      // The cue may have changed while the browser asked.
      if (on && !gates.peek().mayOpen[device]) return;
      if (on && device === 'camera') voiceOnly.value = 'no';
      wishes.value = { ...wishes.peek(), [device]: on };
      if (!on && device === 'camera') media.release('camera');
    },
    async wishTurn(on) {
      if (on && !(await media.open('microphone'))) return;
      wishes.value = { ...wishes.peek(), atMyTurn: on };
    },
    press(down) {
      if (down && gates.peek().mayPress) {
        pressed.value = true;
        void media.open('microphone');
      } else pressed.value = false;
    },
    wishVoiceOnly(on) {
      measures.length = 0;
      voiceOnly.value = on ? 'wished' : 'no';
    },
    close() {
      sayLeft();
      for (const stop of endings) stop();
      clearInterval(measuring);
      end(null);
      media.close();
      socket.off('connect', comeBack);
      socket.off('call', hear);
      socket.off('call-signal', onSignal);
    },
  };
}
