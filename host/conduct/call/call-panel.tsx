import { useCallback } from 'preact/hooks';
import { CallPanel as Panel } from '../../../shared/call/call-panel.tsx';
import type { HostFollower } from '../../../shared/follower/host-follower.ts';
import { openHostCall } from './host-call.ts';

/** In the table's panel, beside the seats of those at home. */
export function CallPanel({ follower }: { readonly follower: HostFollower }) {
  return <Panel open={useCallback(() => openHostCall(follower), [follower])} />;
}
