import type { Ledger } from './ledger.ts';

export interface RehearsalReport {
  readonly guests: number;
  /** How many cues the room was led through. */
  readonly cues: number;
  /** Of these, how many showed on the device of every guest who was connected the whole time. */
  readonly cuesSeenByAll: number;
  /** How often the host tapped the big button. */
  readonly nextTaps: number;
  readonly notesWritten: number;
  readonly notesAcknowledged: number;
  /** Of those acknowledged, how many each guest got back when they asked anew after the end. */
  readonly notesStored: number;
  readonly notesLeakedBeforeDiscussion: number;
  readonly ruleViolations: number;
  readonly violations: readonly string[];
  /** From the host's tap to the arrival of the new stage at each guest's device, in ms. */
  readonly fanoutMs: { readonly p50: number; readonly p99: number };
  /** From the moment set for everybody to the change on each screen, in ms. */
  readonly togetherMs: { readonly p50: number; readonly p99: number };
  readonly reconnects: number;
  readonly seed: number;
  readonly speed: number;
  readonly seconds: number;
  /** Pages of a pour on which a guest wrote something. */
  readonly pagesWritten: number;
  /** Of those, how many their guests left on the table, with a name or without. */
  readonly pagesShared: number;
  /** How often a guest put the glasses of a ranking in order. */
  readonly ordersGiven: number;
  /** Of those, how many they let count. */
  readonly ordersCounted: number;
  /** How often a guest guessed what is in a glass. */
  readonly guessesGiven: number;
  /** Of those, how many they let count. */
  readonly guessesCounted: number;
  readonly resultsTold: number;
  /** Talks at whose end nothing lay on the table. */
  readonly talksWithoutWords: number;
}

export interface Watched {
  readonly guests: number;
  readonly cues: number;
  readonly cuesSeenByAll: number;
  readonly nextTaps: number;
  readonly arrivals: readonly number[];
  readonly delays: readonly number[];
  readonly reconnects: number;
  readonly seed: number;
  readonly speed: number;
  readonly seconds: number;
}

export function reportOf(ledger: Ledger, watched: Watched): RehearsalReport {
  const { arrivals, delays, ...rest } = watched;
  const acknowledged = ledger.notes.filter((note) => note.acknowledged);
  return {
    ...rest,
    notesWritten: ledger.notes.length,
    notesAcknowledged: acknowledged.length,
    notesStored: acknowledged.filter((note) => note.stored).length,
    notesLeakedBeforeDiscussion: ledger.leaks.size,
    ruleViolations: ledger.violations.length,
    violations: ledger.violations.slice(0, 20),
    togetherMs: { p50: percentile(delays, 0.5), p99: percentile(delays, 0.99) },
    fanoutMs: { p50: percentile(arrivals, 0.5), p99: percentile(arrivals, 0.99) },
    ...ledger.given,
  };
}

/** What is wrong, in sentences; nothing when the evening went as it must. */
export function faultsOf(report: RehearsalReport): string[] {
  const { notesWritten, notesAcknowledged, notesStored, notesLeakedBeforeDiscussion } = report;
  const faults = [...report.violations];
  if (notesAcknowledged < notesWritten)
    faults.push(`${notesWritten - notesAcknowledged} notes were never acknowledged.`);
  if (notesStored < notesAcknowledged)
    faults.push(`${notesAcknowledged - notesStored} acknowledged notes were lost.`);
  if (notesLeakedBeforeDiscussion > 0)
    faults.push(`${notesLeakedBeforeDiscussion} notes leaked before their discussion was open.`);
  if (report.cuesSeenByAll < report.cues)
    faults.push(`${report.cues - report.cuesSeenByAll} cues did not show on every device.`);
  return faults;
}

/** Nearest rank; 0 without values. Rounded to a tenth. */
function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  const value = sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? 0;
  return Math.round(value * 10) / 10;
}
