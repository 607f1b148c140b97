import { type ReadonlySignal, signal } from '@preact/signals';
import { type ComponentType, h } from 'preact';

/** A part of the page that is fetched after the page itself, so that the page comes quickly. */
export interface LazyPart<Part> {
  /** Undefined until it is there; reading it in a component asks for it to be drawn again then. */
  readonly now: ReadonlySignal<Part | undefined>;
  /** Whether the last attempt has failed and another is on its way. */
  readonly failing: ReadonlySignal<boolean>;
  /** Once there it stays, also without a network. Until then it is tried again by itself. */
  fetch(): void;
  /** At once instead of after the pause, for who presses a button. */
  again(): void;
}

/** Ms between attempts while the network is gone. */
const pause = 3000;

export function lazyPart<Part>(load: () => Promise<Part>): LazyPart<Part> {
  const now = signal<Part | undefined>(undefined);
  const failing = signal(false);
  let asked = false;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const attempt = (): void => {
    waiting = undefined;
    load().then(
      (part) => {
        failing.value = false;
        now.value = part;
      },
      () => {
        failing.value = true;
        waiting = setTimeout(attempt, pause);
      },
    );
  };
  return {
    now,
    failing,
    fetch() {
      if (asked) return;
      asked = true;
      attempt();
    },
    again() {
      if (waiting === undefined) return;
      clearTimeout(waiting);
      attempt();
    },
  };
}

/** The part if it is there; otherwise it is asked for. */
export function useLazyPart<Part>(part: LazyPart<Part>): Part | undefined {
  part.fetch();
  return part.now.value;
}

/** There, or not to be had for now: what stands below it need not wait, and nothing will push it from under the eye. */
export const isSettled = ({ now, failing }: LazyPart<unknown>): boolean =>
  now.value !== undefined || failing.value;

/** A component of a part, with `Waiting` in its place until the part is there, or nothing. */
export function lazyComponent<Part, Props extends object>(
  part: LazyPart<Part>,
  pick: (part: Part) => ComponentType<Props>,
  Waiting?: ComponentType<{ readonly part: LazyPart<unknown> }>,
): ComponentType<Props> {
  return function LazyComponent(props: Props) {
    const here = useLazyPart(part);
    if (here !== undefined) return h(pick(here), props);
    return Waiting ? h(Waiting, { part }) : null;
  };
}
