import { type Signal, signal } from '@preact/signals';

interface StatusAction {
  readonly label: string;
  readonly onPress: () => void;
}

interface StatusMessage {
  /** Counts up, so that the same words said twice are two messages. */
  readonly id: number;
  readonly text: string;
  /** Spoken only, for what the eye already sees elsewhere on the screen. */
  readonly unseen: boolean;
  readonly action: StatusAction | undefined;
  /** Said of what was left behind: it comes along to the next page. */
  readonly travels: boolean;
}

export interface Status {
  readonly message: Signal<StatusMessage | undefined>;
  readonly say: (text: string, more?: { unseen?: boolean; action?: StatusAction; travels?: boolean }) => void;
  readonly clear: () => void;
  /** Another page has come: what was said of the one before goes with it, and its undo too. */
  readonly turnPage: () => void;
}

/** What the page has to say, one thing at a time. It stays until it is answered, cleared or followed by another. */
export function createStatus(): Status {
  const message = signal<StatusMessage | undefined>(undefined);
  let said = 0;
  return {
    message,
    say: (text, { unseen = false, action, travels = false } = {}) => {
      said += 1;
      message.value = { id: said, text, unseen, action, travels };
    },
    clear: () => {
      message.value = undefined;
    },
    turnPage: () => {
      const { value } = message;
      message.value = value?.travels === true ? { ...value, travels: false } : undefined;
    },
  };
}
