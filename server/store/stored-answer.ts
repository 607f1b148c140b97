import { z } from 'zod';
import type { CommandAnswer, RefusalCode } from '../../shared/wire/protocol.ts';
import { StoreFailure } from './store.ts';

export const storedAnswerSchema = z.union([
  z.object({ ok: z.literal(true), version: z.number().int().min(0) }),
  z.object({ ok: z.literal(false), code: z.string(), message: z.string() }),
]);

/**
 * What a command was answered. Throws `StoreFailure` when it cannot be read: to do it once more would be worse than to
 * refuse.
 */
export function answerIn(text: string): CommandAnswer {
  try {
    const answer = storedAnswerSchema.parse(JSON.parse(text));
    // A code that a later version gave up is still a code: what is shown beside it is the sentence.
    return answer.ok ? answer : { ...answer, code: answer.code as RefusalCode };
  } catch (error) {
    throw new StoreFailure('An answer that was given cannot be read any more.', { cause: error });
  }
}
