import { parentPort } from 'node:worker_threads';
import { type RecapMaterial, recapText } from './recap-text.ts';

export type RecapReply = { readonly text: string } | { readonly failed: string };

/** The other end of `RecapDesk`, in a thread of its own: one recap at a time, in the order in which they were asked for. */
parentPort?.on('message', (material: RecapMaterial) => {
  const answer = (reply: RecapReply) => parentPort?.postMessage(reply);
  try {
    answer({ text: recapText(material) });
  } catch (error) {
    // The name alone: a message might quote what somebody wrote.
    answer({ failed: error instanceof Error ? error.name : 'unknown' });
  }
});
