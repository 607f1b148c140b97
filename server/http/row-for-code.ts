import type { Request, Response } from 'express';
import { normaliseCode } from '../access/join-code.ts';
import type { TastingRow } from '../store/store.ts';
import { Refused } from './answers.ts';
import type { HttpParts } from './parts.ts';

/** The tasting that a typed code belongs to. Throws `Refused`; wrong codes are counted against guessing. */
export type RowFor = (typed: string, request: Request, response: Response) => Promise<TastingRow>;

export const rowForCode =
  ({ store, guesses }: HttpParts): RowFor =>
  async (typed, request, response) => {
    const address = request.ip ?? 'unknown';
    if (!(await guesses.turn(address))) throw new Refused('too-many-tries');
    const code = normaliseCode(typed);
    const row = code === undefined ? undefined : store.tastings.findByCode(code);
    if (row !== undefined) return row;
    const wait = guesses.failed(address);
    if (wait === undefined) throw new Refused('wrong-code');
    response.set('Retry-After', String(wait));
    throw new Refused('too-many-tries');
  };
