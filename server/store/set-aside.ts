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

const sentenceOf = ({ kind, event }: TastingTrouble): string =>
  ({
    'plan-unreadable': 'The plan of this evening cannot be read.',
    'event-unreadable': `Event ${event} of this evening cannot be read.`,
    'event-altered': `Event ${event} of this evening is not as it was stored.`,
    'event-missing': `Event ${event} of this evening is missing.`,
    'log-damaged': 'The log of this evening lies on a damaged part of the disk.',
    faulty: 'The conductor of this evening failed twice.',
  })[kind];
