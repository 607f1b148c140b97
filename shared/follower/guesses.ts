import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { PourId } from '../../core/ids.ts';
import type { GuessesTold, RoomGuesses } from '../wire/guesses.ts';

export type ToldGuesses = ReadonlyMap<PourId, RoomGuesses>;

/** What the room guessed, pour by pour, as far as it is told. */
export function followGuesses(socket: {
  on(event: 'guesses', listener: (told: GuessesTold) => void): unknown;
}): ReadonlySignal<ToldGuesses> {
  const guesses = signal<ToldGuesses>(new Map());
  socket.on('guesses', ({ anew, pours }) => {
    const next = new Map(anew ? [] : guesses.peek());
    for (const each of pours) next.set(each.pour, each);
    guesses.value = next;
  });
  return guesses;
}
