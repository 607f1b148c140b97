import type { Status } from '../shared/ui/status.ts';
import type { KeyRing } from './access/host-keys.ts';
import type { HostApi } from './api.ts';

/** What every page of the host's app is given. */
export interface House {
  readonly api: HostApi;
  readonly ring: KeyRing;
  readonly status: Status;
  /** To be called when a key turns out to be wrong: the page asks for the link again. */
  readonly askForLink: () => void;
}
