import { RawDevice } from './raw-device.ts';
import { anId, askServer, type OpenEvening, shownBy, takeSeat } from './scene.ts';

/**
 * What bad guests do, in a process of their own, so that the tap that is measured beside them waits for the server and
 * not for them: `spoilers.ts NAME ORIGIN EVENING COUNT`. Reports to its parent once a second, and ends with it.
 */
interface Target {
  readonly origin: string;
  readonly evening: OpenEvening;
  readonly count: number;
  readonly report: (said: Record<string, number>) => void;
}

/** The parent has them rest in turns, to have something to compare with. */
let [resting, goOn] = [Promise.resolve(), (): void => undefined];
process.on('message', (does) => {
  goOn();
  if (does === 'rest')
    resting = new Promise((resolve) => {
      goOn = resolve;
    });
});

const rest = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
/** Each another one, and in the place of the one before, so that each is written and sent to the seat's other devices. */
const aNote = () => {
  const id = anId();
  return { id, pour: 'one', field: 'nose', value: `${id} ${'語'.repeat(3900)}`, base: 1_000_000 };
};

const spoilers: Readonly<Record<string, (target: Target) => Promise<void>>> = {
  /** Devices of one seat that read nothing, while another one writes as much as it may. */
  async readers({ origin, evening, count, report }) {
    const shown = shownBy('guest', evening.tasting, await takeSeat(origin, evening.code));
    const writer = await RawDevice.enter(origin, shown);
    const deaf: RawDevice[] = [];
    let saves = 0;
    for (;;) {
      await resting;
      while (deaf.filter(({ gone }) => !gone).length < count) {
        const device = await RawDevice.enter(origin, shown);
        if (device.gone) break;
        device.goDeaf();
        deaf.push(device);
      }
      const saved = (await writer.ask('note:save', aNote())) as { ok?: boolean } | undefined;
      if (saved?.ok === true) saves += 1;
      report({ saves, deaf: deaf.length, letGo: deaf.filter(({ gone }) => gone).length });
      await rest(40);
      if (writer.gone) return;
    }
  },

  /** Sockets of one seat that send as fast as they can, and come back as soon as they are let go. */
  async flood({ origin, evening, count, report }) {
    const shown = shownBy('guest', evening.tasting, await takeSeat(origin, evening.code));
    let [entered, refused] = [0, 0];
    const one = async (): Promise<void> => {
      for (;;) {
        await resting;
        const device = await RawDevice.enter(origin, shown);
        if (device.gone) refused += 1;
        else entered += 1;
        while (!device.gone) {
          await resting;
          device.flood('note:save', aNote(), 50);
          await rest(10);
        }
        report({ entered, refused });
        await rest(50);
      }
    };
    await Promise.all(Array.from({ length: count }, one));
  },

  /** Takes seat after seat, each from another address, and comes to none of them. */
  async fillers({ origin, evening, report }) {
    let [seats, refused] = [0, 0];
    for (let index = 0; ; index += 1) {
      await resting;
      const from = `198.51.${(index >> 8) & 255}.${index & 255}`;
      await takeSeat(origin, evening.code, from).then(
        () => (seats += 1),
        () => (refused += 1),
      );
      report({ seats, refused });
      if (refused > 0) await rest(20);
    }
  },

  /** Programs behind one address, one guess after the other each. */
  async guessers({ origin, count, report }) {
    let [tried, found] = [0, 0];
    const one = async (program: number): Promise<void> => {
      for (let index = program; ; index += count) {
        await resting;
        const code = String(index % 1_000_000).padStart(6, '0');
        const { status } = await askServer(origin, 'GET', `/api/invitations/${code}`, {
          from: '203.0.113.7',
        });
        if (status === 404) tried += 1;
        if (status === 200) found += 1;
        report({ tried, found });
      }
    };
    await Promise.all(Array.from({ length: count }, (_, program) => one(program)));
  },
};

const [, , name = '', origin = '', evening = '{}', count = '1'] = process.argv;
let last: Record<string, number> = {};
setInterval(() => process.send?.(last), 500).unref();
process.on('disconnect', () => process.exit(0));
spoilers[name]?.({
  origin,
  evening: JSON.parse(evening) as OpenEvening,
  count: Number(count),
  report: (said) => {
    last = said;
  },
}).catch(() => process.exit(1));
