import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { answerParent } from './child.ts';
import { isStage, newId, type OpenEvening, openEvening, ToldStage, takeSeats } from './evening.ts';
import { inTurns, RawSocket } from './raw-socket.ts';

/** Many evenings at once in one process, each paced by the clock; their hosts only open the gates. */
interface Table {
  readonly evening: OpenEvening;
  readonly stage: ToldStage;
  /** What the gate in front of it is called, if it stands before one. */
  gate: string | undefined;
}
const plan = planSchema.parse({ ...demoEvening, pacing: { by: 'clock' } });
const tables: Table[] = [];
let going = false;
let turned = 0;

/** A tap that comes before the gate shows on the host's screen is refused, as a double tap would be; they tap again. */
async function open(table: Table): Promise<void> {
  const { gate, evening } = table;
  if (!going || gate === undefined) return;
  const ask = { id: newId(), ask: { type: 'Advance', from: gate } };
  const answer = (await evening.host.ask('host:ask', ask)) as { readonly ok: boolean };
  if (!answer.ok) setTimeout(() => void open(table), 100);
}

function follow(table: Table, text: string): void {
  if (!isStage(text)) return;
  turned += 1;
  table.stage.hear(text);
  const { view } = table.stage;
  table.gate = view.status === 'under-way' && view.cue.gate ? view.cue.id : undefined;
  void open(table);
}

answerParent({
  async sit({
    port,
    houseKey,
    count,
    guests,
  }: Record<'port' | 'count' | 'guests', number> & { houseKey: string }) {
    await inTurns(Array.from({ length: count }), 6, async () => {
      const evening = await openEvening(port, houseKey, plan);
      const table: Table = { evening, stage: new ToldStage(), gate: undefined };
      const auths = await takeSeats(port, evening, guests);
      tables.push(table);
      await Promise.all(
        auths.map((auth, index) =>
          RawSocket.open(port, auth, index === 0 ? (text) => follow(table, text) : undefined),
        ),
      );
    });
    return {};
  },
  /** Not all in the same millisecond: evenings of different houses begin when they do. */
  async begin({ within }: { within: number }) {
    going = true;
    turned = 0;
    await Promise.all(
      tables.map(
        (table, index) =>
          new Promise<void>((done) => {
            setTimeout(() => done(open(table)), (index * within) / tables.length);
          }),
      ),
    );
    return {};
  },
  turned: () => turned,
});
