import { refusals } from '../shared/language/en/refusals.ts';
import type { Refusal, RefusalCode } from '../shared/wire/protocol.ts';

export const refusal = (code: RefusalCode, message: string = refusals[code]): Refusal => ({
  ok: false,
  code,
  message,
});
