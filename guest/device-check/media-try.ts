import { failureOf } from '../../shared/call/media-failure.ts';
import type { DeviceResult } from '../../shared/wire/device-check.ts';

type Devices = Pick<MediaDevices, 'getUserMedia'>;

export interface MediaTry {
  readonly camera: DeviceResult;
  readonly microphone: DeviceResult;
  /** What of them came, for as long as the page tries it; undefined where neither did. */
  readonly stream: MediaStream | undefined;
}

/** Small: it is to be seen that it works, not how well. */
const picture = { width: { ideal: 640 }, height: { ideal: 480 }, facingMode: 'user' } as const;

/** Asks for both in one question; where that fails each is asked for by itself, for one may come without the other. */
export async function openMedia(devices: Devices): Promise<MediaTry> {
  try {
    const stream = await devices.getUserMedia({ audio: true, video: picture });
    return { camera: 'works', microphone: 'works', stream };
  } catch {
    const [microphone, heard] = await openOne(devices, { audio: true });
    const [camera, seen] = await openOne(devices, { video: picture });
    const tracks = [heard, seen].flatMap((stream) => stream?.getTracks() ?? []);
    return { camera, microphone, stream: tracks.length === 0 ? undefined : new MediaStream(tracks) };
  }
}

async function openOne(
  devices: Devices,
  wanted: MediaStreamConstraints,
): Promise<readonly [DeviceResult, MediaStream | undefined]> {
  try {
    return ['works', await devices.getUserMedia(wanted)];
  } catch (error) {
    return [whyNot(error), undefined];
  }
}

/** What is none of the usual reasons looks to its owner like a no. */
export function whyNot(error: unknown): Exclude<DeviceResult, 'works'> {
  const failure = failureOf(error);
  return failure === 'failed' ? 'refused' : failure;
}

export function closeMedia(stream: MediaStream | undefined): void {
  for (const track of stream?.getTracks() ?? []) track.stop();
}
