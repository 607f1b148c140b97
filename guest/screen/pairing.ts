import { type ReadonlySignal, signal } from '@preact/signals';
import type { After } from '../../shared/follower/timer.ts';
import type { Admission } from '../../shared/page/screen-preview.ts';
import { type HttpAnswer, passesByItself } from '../../shared/wire/answer.ts';
import type { ScreenAnswer } from '../../shared/wire/http.ts';

export type Pairing =
  | { readonly at: 'asking'; readonly trouble: string | null }
  | { readonly at: 'waiting'; readonly number: number; readonly trouble: string | null }
  | { readonly at: 'admitted'; readonly admission: Admission }
  /** Nothing more is asked until a person does something. */
  | { readonly at: 'refused'; readonly code: string };

export type RequestScreen = (ask: {
  readonly code: string;
  readonly key: string;
}) => Promise<HttpAnswer<ScreenAnswer>>;

export interface PairingOptions {
  readonly code: string;
  /** Made on this screen, so that asking again is harmless. */
  readonly key: string;
  readonly ask: RequestScreen;
  readonly after: After;
}

/** Ms between asks: while the host looks for the number, and while the server has something against it for now. */
export const askEvery = 3000;
export const troubledEvery = 10_000;

/** Here these pass too, once the host has let somebody go. */
const alsoPassing: ReadonlySet<string> = new Set(['too-many-tries', 'table-full']);

/** Asks with its key again and again until the host has let the screen in, or has said no. */
export function createPairing({ code, key, ask, after }: PairingOptions): {
  readonly state: ReadonlySignal<Pairing>;
  close(): void;
} {
  const state = signal<Pairing>({ at: 'asking', trouble: null });
  let closed = false;
  let cancel: () => void = () => undefined;

  const again = (ms: number): void => {
    cancel = after(ms, () => void once());
  };
  const once = async (): Promise<void> => {
    const answer = await ask({ code, key });
    if (closed) return;
    if (answer.ok) {
      const { body } = answer;
      if (body.admitted) {
        const { tasting, linkCode, guestOrigins } = body;
        state.value = {
          at: 'admitted',
          admission: { tasting, key, code: body.code, linkCode, guestOrigins },
        };
      } else {
        state.value = { at: 'waiting', number: body.number, trouble: null };
        again(askEvery);
      }
    } else if (passesByItself(answer.code) || alsoPassing.has(answer.code)) {
      const before = state.peek();
      // The number still stands at the host's while a network comes and goes.
      state.value =
        before.at === 'waiting'
          ? { ...before, trouble: answer.code }
          : { at: 'asking', trouble: answer.code };
      again(answer.code === 'no-answer' ? askEvery : troubledEvery);
    } else {
      state.value = { at: 'refused', code: answer.code };
    }
  };
  void once();
  return {
    state,
    close() {
      closed = true;
      cancel();
    },
  };
}
