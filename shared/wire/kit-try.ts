import type { EpochMs } from '../../core/units.ts';
import type { CallReach } from './call-servers.ts';

/** How each part of a kit at home did when it was tried; what was not tried is absent. */
export interface KitTry {
  readonly camera?: DeviceTry;
  /** `silent`: it is there and nothing was heard. */
  readonly microphone?: DeviceTry | 'silent';
  readonly loudspeaker?: 'works' | 'silent';
  /** `voice`: enough for a voice, hardly for pictures. `slow`: not enough for either. */
  readonly line?: 'works' | 'voice' | 'slow' | 'gone';
}

/** `refused`: its owner, or the browser's settings, said no. `none`: there is no such device. `taken`: another program has it. */
export type DeviceTry = 'works' | 'refused' | 'none' | 'taken';

/** What a guest at home tells their host before the evening. Null takes it back. */
export interface KitReport {
  /** Made on the device, and no respondent of the survey: what was answered there has no name. */
  readonly id: string;
  readonly told: { readonly name: string; readonly tried: KitTry } | null;
}

/** For the host alone: who has tried their kit, the latest first. */
export interface KitReports {
  readonly kits: readonly { readonly name: string; readonly tried: KitTry; readonly at: EpochMs }[];
  readonly reach: CallReach;
}

/** Whether a kit is ready for the evening: with every part tried and none of them amiss. A line for voices will do. */
export const kitIsReady = ({ camera, microphone, loudspeaker, line }: KitTry): boolean =>
  camera === 'works' &&
  microphone === 'works' &&
  loudspeaker === 'works' &&
  (line === 'works' || line === 'voice');
