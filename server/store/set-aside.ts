import type { TastingId } from '../../core/ids.ts';
import type { TastingTrouble } from '../../shared/wire/http.ts';
import { StoreFailure } from './store.ts';

/**
 * One evening cannot go on: something of it cannot be read, or its conductor failed twice. Nothing else is concerned. The
 * message is for the log and names no word of what was stored.
 */
export class SetAside extends StoreFailure {
  readonly tasting: TastingId;
  readonly trouble: TastingTrouble;

  constructor(tasting: TastingId, trouble: TastingTrouble, options?: ErrorOptions) {
    super(sentenceOf(trouble), options);
    this.tasting = tasting;
    this.trouble = trouble;
  }
}

function sentenceOf({ kind, event }: TastingTrouble): string {
  switch (kind) {
    case 'plan-unreadable':
      return 'The plan of this evening cannot be read.';
    case 'event-unreadable':
      return `Event ${event} of this evening cannot be read.`;
    case 'event-altered':
      return `Event ${event} of this evening is not as it was stored.`;
    case 'event-missing':
      return `Event ${event} of this evening is missing.`;
    case 'log-damaged':
      return 'The log of this evening lies on a damaged part of the disk.';
    case 'faulty':
      return 'The conductor of this evening failed twice.';
    default:
      return kind satisfies never;
  }
}
