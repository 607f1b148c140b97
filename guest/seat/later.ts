import { type ReadonlySignal, signal } from '@preact/signals';

/** A part of the page that is fetched after sitting down, so that the seat itself comes quickly. */
export interface Later<Part> {
  /** Undefined until it is there; reading it in a component asks for it to be drawn again then. */
  readonly now: ReadonlySignal<Part | undefined>;
  /** Once there it stays, also without a network. */
  fetch(): void;
}

/** Ms between attempts while the network is gone. */
const pause = 3000;

export function later<Part>(load: () => Promise<Part>): Later<Part> {
  const now = signal<Part | undefined>(undefined);
  let asked = false;
  const attempt = (): void => {
    load().then(
      (part) => {
        now.value = part;
      },
      () => {
        setTimeout(attempt, pause);
      },
    );
  };
  return {
    now,
    fetch() {
      if (asked) return;
      asked = true;
      attempt();
    },
  };
}

/** The part if it is there; otherwise it is asked for. */
export function useLater<Part>(part: Later<Part>): Part | undefined {
  part.fetch();
  return part.now.value;
}
