import type { TastingId } from '../../core/ids.ts';
import type { Plan } from '../../core/tasting.ts';
import type { Clock } from '../clock.ts';
import type { Store } from '../store/store.ts';
import type { CallServers } from './call-room.ts';
import type { DeviceDesk } from './device-desk.ts';
import type { Presence } from './presence.ts';
import type { LiveServer } from './rooms.ts';
import type { ScreensAtDoor } from './screens-at-door.ts';

export interface PublisherParts {
  readonly io: LiveServer;
  readonly tasting: TastingId;
  readonly store: Store;
  readonly clock: Clock;
  readonly presence: Presence;
  readonly screens: ScreensAtDoor;
  readonly devices: Pick<DeviceDesk, 'view'>;
  readonly callServers?: CallServers;
  readonly plan: () => Plan | undefined;
}
