import type { Request } from 'express';
import { addressOf } from '../access/address.ts';
import { readCode } from '../access/join-code.ts';
import type { TastingRow } from '../store/store.ts';
import { Refused } from './answers.ts';
import type { HttpParts } from './parts.ts';

/** The tasting that a code belongs to, as it was typed or as a link carries it. Throws `Refused`. */
export type RowFor = (given: string, request: Request) => Promise<TastingRow>;

export function rowForCode({ store, keyring, guesses }: HttpParts): RowFor {
  return async (given, request) => {
    const address = addressOf(request);
    const read = readCode(given);
    const rowNow = async () => (read === undefined ? undefined : store.tastings.findByCode(read.code));
    // A link's key cannot be guessed, so that nobody's guesses stand in its way, and it still opens what is over.
    const meant = read?.pass === undefined ? undefined : await rowNow();
    if (meant !== undefined && keyring.passOpens(meant.tasting, read?.pass ?? '')) return meant;
    // A link from before the house key was changed is as good as the code in it.
    if (!(await guesses.turn(address))) throw new Refused('too-many-tries');
    const row = await rowNow();
    // The same answer for a code that was and for one that never was.
    if (row !== undefined && store.tastings.summary(row.tasting)?.stage !== 'finished') return row;
    guesses.failed(address);
    throw new Refused('wrong-code');
  };
}
