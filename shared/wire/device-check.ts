import type { EpochMs } from '../../core/units.ts';
import type { CallReach } from './call-servers.ts';

/** How camera, sound and line at home did when it was tried; what was not tried is absent. */
export interface DeviceResults {
  readonly camera?: DeviceResult;
  /** `silent`: it is there and nothing was heard. */
  readonly microphone?: DeviceResult | 'silent';
  readonly loudspeaker?: 'works' | 'silent';
  /** `voice`: enough for a voice, hardly for pictures. `slow`: not enough for either. */
  readonly line?: 'works' | 'voice' | 'slow' | 'gone';
}

/** `refused`: its owner, or the browser's settings, said no. `none`: there is no such device. `taken`: another program has it. */
export type DeviceResult = 'works' | 'refused' | 'none' | 'taken';

/** What a guest at home tells their host before the evening. Null takes it back. */
export interface DeviceReport {
  /** Made on the device, and no respondent of the survey: what was answered there has no name. */
  readonly id: string;
  readonly told: { readonly name: string; readonly tried: DeviceResults } | null;
}

/** For the host alone: who has tried their devices, the latest first. */
export interface DeviceReports {
  readonly kits: readonly { readonly name: string; readonly tried: DeviceResults; readonly at: EpochMs }[];
  readonly reach: CallReach;
}

/** Whether all is ready for the call: every part tried and none of them amiss. A line for voices will do. */
export const devicesAreReady = ({ camera, microphone, loudspeaker, line }: DeviceResults): boolean =>
  camera === 'works' &&
  microphone === 'works' &&
  loudspeaker === 'works' &&
  (line === 'works' || line === 'voice');
