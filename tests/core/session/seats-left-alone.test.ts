import { expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { roomView } from '../../../core/session/views/host.ts';
import { hostSeats } from '../../../core/session/views/host-seats.ts';
import { changeBetween } from '../../../shared/wire/parts.ts';
import { EveningTold } from '../../support/evening.ts';

/** With thousands of guests, looking at every seat costs more than all else of a tap; counted here, for time says nothing. */
it('looks at nobody’s seat to show the host a tap that changes none, and at one where one has signalled', () => {
  const evening = new EveningTold().sit('ann', 'ben', 'cleo').wait(60);
  let looks = 0;
  const seats = new Proxy(evening.underWay.seats, {
    ownKeys: (all) => {
      looks += Object.keys(all).length;
      return Reflect.ownKeys(all);
    },
    get: (all, key) => {
      looks += 1;
      return Reflect.get(all, key);
    },
  });
  evening.session = { ...evening.underWay, seats };
  /** As the host's devices are shown it. */
  const shown = (known?: Parameters<typeof hostSeats>[1]) => {
    const session = evening.underWay;
    roomView(session, 1);
    return { session, seats: hostSeats(session, known) };
  };
  // What all seats come to is reckoned once, by the first tap after somebody has sat down.
  const first = shown();
  evening.next();
  const known = shown(first);
  evening.next();
  looks = 0;
  const then = shown(known);
  expect(looks).toBe(0);
  expect(then.seats).toBe(first.seats);
  expect(changeBetween(first.seats, then.seats)).toEqual({ gone: [], put: [] });

  evening.guest('ben', { type: 'GiveSignal', signal: 'needs-host', cue: cueId(evening.cue) });
  looks = 0;
  const change = changeBetween(then.seats, shown(then).seats);
  expect(looks).toBe(1);
  expect(change.put.map(([seat]) => seat)).toEqual(['ben']);
});
