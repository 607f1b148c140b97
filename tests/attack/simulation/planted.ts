import type { Store } from '../../../server/store/store.ts';
import type { Planted } from './device.ts';
import { type Bent, isHost } from './house.ts';

/** Faults on the server's side, put in from outside through the store and the connections. */
export const bentBy = (planted: Planted): Bent => ({
  store(store): Store {
    let bent = store;
    if (planted.hastyStore) {
      const { append } = bent.sessions;
      bent = {
        ...bent,
        sessions: {
          ...bent.sessions,
          append: async (entry) => {
            void append(entry).catch(() => undefined);
          },
        },
      };
    }
    if (planted.forgetsAnswers) {
      bent = {
        ...bent,
        sessions: { ...bent.sessions, answerTo: () => undefined },
        notebooks: { ...bent.notebooks, answerTo: () => undefined },
      };
    }
    return bent;
  },
  board(board): void {
    if (!planted.leaks) return;
    board.overheard = (by, event, payload) => {
      if (event !== 'notebook' || isHost(by)) return;
      for (const end of board.connected) if (isHost(end)) end.emit(event, payload);
    };
  },
});
