import type { CommandId, CueId, SeatId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import type { StoredEntry } from '../../../server/store/store.ts';
import type { CommandAnswer } from '../../../shared/wire/protocol.ts';

/** A step that the host's device was told is done. */
interface Step {
  readonly id: CommandId;
  readonly cue: CueId;
  readonly answer: CommandAnswer;
}

/** One field as its only writer left it. */
export interface Page {
  readonly seat: SeatId;
  readonly pour: string;
  readonly field: string;
  /** Each value that the server acknowledged, in order; the last is what must stand there. */
  readonly acknowledged: string[];
}

/** What the devices were told, kept outside the server. */
export interface Ledger {
  readonly steps: Step[];
  readonly pages: Page[];
}

/** What the store holds once nobody writes any more. */
export interface Found {
  readonly events: readonly SessionEvent[];
  readonly entries: readonly (StoredEntry & { readonly seat: SeatId })[];
  readonly answerTo: (id: CommandId) => CommandAnswer | undefined;
}

/** Holds what was told against what is stored: nothing lost, nothing doubled, nothing else. */
export function compare({ steps, pages }: Ledger, { events, entries, answerTo }: Found): string[] {
  const faults: string[] = [];
  const entered = events.flatMap((event) => (event.type === 'CueEntered' ? [event.cue] : []));
  const told = steps.map((step) => step.cue);
  if (entered.join() !== told.join())
    faults.push(
      `The log has ${entered.length} steps, and ${told.length} were acknowledged${firstOdd(entered, told)}.`,
    );
  for (const { id, cue, answer } of steps) {
    const event = answer.ok ? events[answer.version - 1] : undefined;
    if (event?.type !== 'CueEntered' || event.cue !== cue)
      faults.push(`The step to ${cue} was acknowledged as an event that it is not.`);
    if (JSON.stringify(answerTo(id)) !== JSON.stringify(answer))
      faults.push(`The step to ${cue} is not remembered as it was answered.`);
  }
  for (const page of pages) {
    const where = `${page.seat} ${page.pour} ${page.field}`;
    const stored = entries.find(
      (each) => each.seat === page.seat && each.pour === page.pour && each.field === page.field,
    );
    const last = page.acknowledged.at(-1);
    if ((stored?.value ?? undefined) !== last) faults.push(`${where} is not what was acknowledged last.`);
    // Each save makes one revision: one more would be a save carried out twice.
    if ((stored?.revision ?? 0) !== page.acknowledged.length)
      faults.push(
        `${where} has revision ${stored?.revision}, and ${page.acknowledged.length} saves were acknowledged.`,
      );
  }
  if (entries.length !== pages.filter((page) => page.acknowledged.length > 0).length)
    faults.push('The store has notes that nobody wrote.');
  return faults;
}

function firstOdd(entered: readonly string[], told: readonly string[]): string {
  const index = entered.findIndex((cue, at) => cue !== told[at]);
  return index === -1 ? '' : `; step ${index + 1} is ${entered[index]} there and ${told[index]} here`;
}
