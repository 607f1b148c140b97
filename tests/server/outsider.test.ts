import { describe, expect, it } from 'vitest';
import type { Store } from '../../server/store/store.ts';
import { compareTwins } from '../attack/secrets/outsider.ts';

describe('[Q1] an outsider with every key that exists, and no code of ours', () => {
  it('sees the same frames with and without notes, the host too', { timeout: 60_000 }, async () => {
    const { findings, frames, inside, inCall, heardAloud } = await compareTwins();
    expect(findings).toEqual([]);
    expect(frames).toBeGreaterThan(100);
    const guests = ['other guest', 'guest at home'];
    const byKey = ['second host', 'screen', 'host-made link to the seat', 'helper'];
    expect(inside).toEqual(['host', ...guests, ...byKey]);
    // A helper, a guest at the table and a preview of a screen hear of no call; nor does a key of before the door.
    expect(inCall).toEqual(['host', 'guest at home', 'second host', 'host-made link to the seat']);
    expect(heardAloud).toBe(true);
  });

  it('finds a server that merely counts notes into what the host sees', { timeout: 60_000 }, async () => {
    const counting = (store: Store): Store => {
      let notes = 0;
      return {
        ...store,
        notebooks: {
          ...store.notebooks,
          save: (write) => {
            notes += 1;
            return store.notebooks.save(write);
          },
        },
        sessions: {
          ...store.sessions,
          append: (entry) => {
            for (const event of entry.events)
              if (event.type === 'ReminderGiven') Object.assign(event, { at: event.at + notes });
            return store.sessions.append(entry);
          },
        },
      };
    };
    expect((await compareTwins(counting)).findings.join('\n')).toContain('host, frame');
  });
});
