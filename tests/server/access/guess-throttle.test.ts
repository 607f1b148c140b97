import { describe, expect, it } from 'vitest';
import { GuessThrottle } from '../../../server/access/guess-throttle.ts';
import { ManualClock } from '../support/manual-clock.ts';

function aThrottle() {
  const clock = new ManualClock();
  return { clock, throttle: new GuessThrottle(clock) };
}

const wrong = (throttle: GuessThrottle, address: string, times: number): void => {
  for (let time = 0; time < times; time += 1) throttle.failed(address);
};

/** How many of so many look-ups at once have passed after so many seconds, and how many were refused by then. */
async function asked(
  { clock, throttle }: ReturnType<typeof aThrottle>,
  address: (index: number) => string,
  times: number,
  seconds: number,
) {
  const count = { passed: 0, refused: 0 };
  for (let index = 0; index < times; index += 1) {
    void throttle.turn(address(index)).then((may) => {
      if (may) count.passed += 1;
      else count.refused += 1;
    });
  }
  await clock.advance(seconds * 1000);
  return { ...count };
}

describe('an address with wrong codes', () => {
  it('has a hundred for nothing, and another every five seconds', async () => {
    const one = aThrottle();
    wrong(one.throttle, 'here', 99);
    expect(await asked(one, () => 'here', 500, 0)).toEqual({ passed: 500, refused: 0 });
    wrong(one.throttle, 'here', 1);
    expect(await asked(one, () => 'here', 2, 0)).toEqual({ passed: 1, refused: 0 });
    await one.clock.advance(5000);
    expect(await asked(one, () => 'here', 500, 0)).toEqual({ passed: 500, refused: 0 });
  });

  it('takes turns after that, twenty in a second, in the order in which they came, and no others wait', async () => {
    const one = aThrottle();
    wrong(one.throttle, 'here', 200);
    const order: number[] = [];
    for (let index = 0; index < 20; index += 1) {
      void one.throttle.turn('here').then(() => void order.push(index));
    }
    expect(await one.throttle.turn('there')).toBe(true);
    await one.clock.advance(0);
    expect(order).toEqual([0]);
    await one.clock.advance(475);
    expect(order).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it('is refused what would wait longer than ten seconds', async () => {
    const one = aThrottle();
    wrong(one.throttle, 'here', 500);
    expect(await asked(one, () => 'here', 500, 1)).toEqual({ passed: 21, refused: 299 });
  });
});

describe('wrong codes over the whole server', () => {
  const address = (index: number) => `address-${index}`;
  const guessed = (throttle: GuessThrottle, times: number): void => {
    for (let index = 0; index < times; index += 1) throttle.failed(address(index));
  };

  it('let five hundred pass, then all addresses take turns together', async () => {
    const one = aThrottle();
    guessed(one.throttle, 499);
    expect(await asked(one, address, 500, 0)).toEqual({ passed: 500, refused: 0 });
    guessed(one.throttle, 1);
    const { passed } = await asked(one, address, 100, 0.475);
    expect(passed).toBe(10);
  });

  it('make the turns longer, to half a second', async () => {
    const [thousand, many] = [aThrottle(), aThrottle()];
    guessed(thousand.throttle, 1500);
    expect((await asked(thousand, address, 100, 0.975)).passed).toBe(10);
    guessed(many.throttle, 100_000);
    expect((await asked(many, address, 100, 9.9)).passed).toBe(20);
  });

  it('cost nothing where somebody has come in, and are forgotten', async () => {
    const one = aThrottle();
    one.throttle.cameInFrom('here');
    guessed(one.throttle, 20_000);
    expect(await asked(one, () => 'here', 50, 0)).toEqual({ passed: 50, refused: 0 });
    await one.clock.advance(60_000);
    expect(await asked(one, address, 50, 0)).toEqual({ passed: 50, refused: 0 });
    // From where somebody has come in one guesses as slowly as from anywhere else.
    wrong(one.throttle, 'here', 200);
    expect((await asked(one, () => 'here', 50, 0.475)).passed).toBe(10);
  });
});
