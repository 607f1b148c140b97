import type { PourId } from '../../ids.ts';
import type { EpochMs } from '../../units.ts';
import type { Evening } from '../state.ts';

/** [Q3] The first opening seals; opening again shows the same sealed notes. */
export const opening = ({ discussions }: Evening, pours: readonly PourId[], at: EpochMs) => ({
  ...discussions,
  ...Object.fromEntries(
    pours.map((pour) => [pour, { sealedAt: discussions[pour]?.sealedAt ?? at, open: true }]),
  ),
});

export const closing = (session: Evening, pours: readonly PourId[]) =>
  Object.fromEntries(
    pours.flatMap((pour) => {
      const discussion = session.discussions[pour];
      return discussion === undefined ? [] : [[pour, { ...discussion, open: false }]];
    }),
  );
