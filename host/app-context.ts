import type { Signal } from '@preact/signals';
import type { TastingId } from '../core/ids.ts';
import type { Status } from '../shared/ui/status.ts';
import type { HostKeys } from './access/host-keys.ts';
import type { HostApi } from './api.ts';

/** What every page of the host's app is given. */
export interface AppContext {
  readonly api: HostApi;
  readonly keys: HostKeys;
  readonly status: Status;
  /** The evening whose call goes on while pages of its plan are looked at. */
  readonly calling: Signal<TastingId | null>;
  /** To be called when a key turns out to be wrong: the page asks for the link again. */
  readonly askForLink: () => void;
}

/** What a page of one tasting is given that does not follow its room. */
export interface TastingPageProps {
  readonly tasting: TastingId;
  readonly app: AppContext;
}
