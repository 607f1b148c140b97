import { type ReadonlySignal, signal } from '@preact/signals-core';
import { failureOf, type MediaFailure } from './media-failure.ts';

export type Device = 'microphone' | 'camera';

/** The camera and the microphone of this device. They are asked for when their owner wants them, and not before [V4]. */
export interface OwnMedia {
  readonly tracks: ReadonlySignal<Readonly<Record<Device, MediaStreamTrack | null>>>;
  readonly failures: ReadonlySignal<Readonly<Record<Device, MediaFailure | null>>>;
  /** @returns whether it is here */
  open(device: Device): Promise<boolean>;
  /** Its owner has read what was wrong. */
  forgetFailures(): void;
  /** Lets go of it, so that its light goes out. */
  release(device: Device): void;
  close(): void;
}

/** Small enough for seven at once; a face in a strip needs no more. */
const picture: MediaTrackConstraints = {
  width: { ideal: 480, max: 640 },
  height: { ideal: 360, max: 480 },
  frameRate: { ideal: 20, max: 24 },
};
/** The sound of the room comes out of loudspeakers beside the microphone: echo is taken out. */
const sound: MediaTrackConstraints = {
  echoCancellation: true,
  noiseSuppression: true,
  autoGainControl: true,
};

/** @param facing which camera of a phone: its owner's face, or the table before it */
export function createOwnMedia(
  facing: 'user' | 'environment' = 'user',
  devices: MediaDevices | undefined = navigator.mediaDevices,
): OwnMedia {
  const tracks = signal<Readonly<Record<Device, MediaStreamTrack | null>>>({
    microphone: null,
    camera: null,
  });
  const failures = signal<Readonly<Record<Device, MediaFailure | null>>>({ microphone: null, camera: null });
  const asking: Partial<Record<Device, Promise<boolean>>> = {};
  let closed = false;

  const say = (device: Device, failure: MediaFailure | null): void => {
    if (failures.peek()[device] !== failure) failures.value = { ...failures.peek(), [device]: failure };
  };
  const put = (device: Device, track: MediaStreamTrack | null): void => {
    tracks.value = { ...tracks.peek(), [device]: track };
  };
  const ask = async (device: Device): Promise<boolean> => {
    if (devices?.getUserMedia === undefined) {
      say(device, 'needs-https');
      return false;
    }
    try {
      const stream = await devices.getUserMedia(
        device === 'camera' ? { video: { ...picture, facingMode: facing } } : { audio: sound },
      );
      const [track] = stream.getTracks();
      if (track === undefined || closed) {
        track?.stop();
        return false;
      }
      // Nothing of it goes anywhere before a gate opens.
      track.enabled = false;
      track.onended = () => {
        if (tracks.peek()[device] !== track) return;
        put(device, null);
        say(device, 'unplugged');
      };
      // As a telephone does with the microphone while it rings.
      track.onmute = () => say(device, 'taken');
      track.onunmute = () => say(device, null);
      say(device, null);
      put(device, track);
      return true;
    } catch (error) {
      say(device, failureOf(error));
      return false;
    }
  };

  const release = (device: Device): void => {
    const track = tracks.peek()[device];
    if (track === null) return;
    put(device, null);
    track.stop();
  };

  return {
    tracks,
    failures,
    open(device) {
      if (tracks.peek()[device] !== null) return Promise.resolve(true);
      const under = asking[device] ?? ask(device);
      asking[device] = under;
      return under.finally(() => {
        delete asking[device];
      });
    },
    forgetFailures() {
      failures.value = { microphone: null, camera: null };
    },
    release,
    close() {
      closed = true;
      release('microphone');
      release('camera');
    },
  };
}
