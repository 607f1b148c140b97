import { signal } from '@preact/signals-core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { peerId, seatId } from '../../../core/ids.ts';
import type { CallEvening } from '../../../shared/call/call.ts';
import { createCall } from '../../../shared/call/create-call.ts';
import type { OwnMedia } from '../../../shared/call/own-media.ts';
import type { CallCommand, CallView } from '../../../shared/wire/call.ts';

beforeEach(() => {
  vi.useFakeTimers();
  // Nobody else is here, so that no line is laid.
  vi.stubGlobal('RTCPeerConnection', class {});
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const noMedia: OwnMedia = {
  tracks: signal({ microphone: null, camera: null }),
  failures: signal({ microphone: null, camera: null }),
  open: () => Promise.resolve(false),
  forgetFailures: () => undefined,
  release: () => undefined,
  close: () => undefined,
};

const seat = seatId('seat-of-wren');

/** A server that refuses as too fast what `refuses` names, and a device of a guest at home in its call. */
function opened() {
  const sent: CallCommand['type'][] = [];
  const refuses = new Set<CallCommand['type']>();
  const listeners = new Map<string, (told?: CallView) => void>();
  const answered = (command: CallCommand) => {
    sent.push(command.type);
    if (refuses.has(command.type)) return Promise.resolve({ ok: false, code: 'too-fast' });
    if (command.type === 'Join') {
      const { peer, shown } = command;
      listeners.get('call')?.({ peers: [{ ...shown, peer, role: 'guest', seat, name: 'Wren' }] });
    }
    return Promise.resolve({ ok: true });
  };
  const socket = {
    connected: true,
    on: (event: string, heard: () => void) => listeners.set(event, heard),
    off: () => undefined,
    timeout: () => ({ emitWithAck: (_: string, command: CallCommand) => answered(command) }),
  };
  const call = createCall(
    {
      socket: socket as unknown as CallEvening['socket'],
      role: 'guest',
      seat,
      scene: signal('open'),
      turn: signal(null),
      raised: signal(new Set()),
    },
    noMedia,
  );
  const times = (type: CallCommand['type']) => sent.filter((each) => each === type).length;
  return { call, socket, refuses, times, listeners };
}

describe('[V6] what the server refuses as too fast', () => {
  it('is sent again when a device leaves, so that the others do not go on seeing it', async () => {
    const { call, refuses, times } = opened();
    await call.join();
    refuses.add('Leave');
    call.leave();
    await vi.advanceTimersByTimeAsync(3500);
    expect(times('Leave')).toBe(4);
    refuses.clear();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(times('Leave')).toBe(5);
    call.close();
  });

  it('is not sent again once the device is in the call anew, which it would be thrown out of', async () => {
    const { call, refuses, times } = opened();
    await call.join();
    refuses.add('Leave');
    call.leave();
    await vi.advanceTimersByTimeAsync(500);
    await call.join();
    expect(call.place.value.at).toBe('in');
    await vi.advanceTimersByTimeAsync(60_000);
    expect(times('Leave')).toBe(1);
    call.close();
  });

  it('is waited for when a device joins, and said when that takes too long', async () => {
    const { call, refuses } = opened();
    refuses.add('Join');
    const joined = call.join();
    await vi.advanceTimersByTimeAsync(5000);
    expect(call.place.value.at).toBe('joining');
    refuses.clear();
    await vi.advanceTimersByTimeAsync(1000);
    await joined;
    expect(call.place.value.at).toBe('in');
    call.leave();
    refuses.add('Join');
    const refused = call.join();
    await vi.advanceTimersByTimeAsync(12_000);
    await refused;
    expect(call.place.value).toEqual({ at: 'out', why: 'too-fast' });
    call.close();
  });

  it('is sent again when a line has come back, and what is open is shown until it is known', async () => {
    const { call, refuses, times, listeners } = opened();
    await call.join();
    for (const each of ['Join', 'Show'] as const) refuses.add(each);
    listeners.get('connect')?.();
    await vi.advanceTimersByTimeAsync(0);
    const before = times('Join');
    await vi.advanceTimersByTimeAsync(2500);
    expect(times('Join')).toBe(before + 2);
    refuses.clear();
    await vi.advanceTimersByTimeAsync(30_000);
    expect(times('Join')).toBe(before + 3);
    call.close();
  });

  it('[V7] does not take the call back from another device that has it by the time the line has come back', async () => {
    const { call, times, listeners } = opened();
    await call.join();
    const before = times('Join');
    const shown = { microphone: false, camera: false, voiceOnly: false };
    const other = {
      ...shown,
      peer: peerId('peer-of-another-phone'),
      role: 'guest',
      seat,
      name: 'Wren',
    } as const;
    listeners.get('connect')?.();
    listeners.get('call')?.({ peers: [other] });
    await vi.advanceTimersByTimeAsync(30_000);
    expect(call.place.value).toEqual({ at: 'out', why: 'elsewhere' });
    expect(times('Join')).toBe(before);
    call.close();
  });

  it('is left alone while there is no line', async () => {
    const { call, socket, refuses, times } = opened();
    await call.join();
    refuses.add('Leave');
    call.leave();
    socket.connected = false;
    await vi.advanceTimersByTimeAsync(60_000);
    expect(times('Leave')).toBe(1);
    call.close();
  });
});
