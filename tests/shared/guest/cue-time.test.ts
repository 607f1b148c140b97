import { expect, it } from 'vitest';
import { saidAt } from '../../../guest/stage/cue-time.ts';
import { guestWords } from '../../../shared/language/en/guest.ts';

it('bids nobody finish writing who has nothing to write', () => {
  const { spoken } = guestWords;
  expect(saidAt(spoken, 0, { sense: 'nose' })).toBe('Time is up. You may finish writing.');
  expect(saidAt(spoken, 0, { sense: null })).toBe('Time is up.');
  expect(saidAt(spoken, 20, { sense: 'nose' })).toBe('Twenty seconds left.');
});
