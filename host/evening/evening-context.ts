import type { Signal } from '@preact/signals';
import type { OpenCall } from '../../shared/call/call-panel.tsx';
import type { HostFollower } from '../../shared/follower/host-follower.ts';
import type { StoredPlan } from '../../shared/wire/http.ts';
import type { AppContext } from '../app-context.ts';
import type { CommandsUnderWay } from './commands-under-way.ts';

/** One tasting as its pages share it: the plan as stored, the live room, and the way to ask it for something. */
export interface EveningContext {
  readonly app: AppContext;
  readonly stored: StoredPlan;
  readonly follower: HostFollower;
  readonly commands: CommandsUnderWay;
  /** With those at home, from the first look at it until the last page of the evening is left; null before. */
  readonly call: Signal<OpenCall | null>;
}
