import { signal } from '@preact/signals';
import type { HostPour } from '../../core/session/views/host.ts';
import { keepText, keptText } from '../../shared/page/device-storage.ts';
import { words } from '../language.ts';

/** Whether this device covers the names of blind pours. On, until somebody turns it off on this device. */
const place = 'quietpour.names-cover';
export const namesCovered = signal(keptText(place) !== 'off');

export function coverNames(cover: boolean): void {
  namesCovered.value = cover;
  keepText(place, cover ? null : 'off');
}

/** What may be said of a pour beside its name. */
export type Coverable = Pick<HostPour, 'name' | 'code' | 'position' | 'revealed'>;

/** Until its name has been told a blind pour is covered: the tablet lies on the table, face up. */
export const isCovered = (pour: Pick<Coverable, 'revealed'>, blind: boolean): boolean =>
  namesCovered.value && blind && !pour.revealed;

/** What stands for the name while it is covered. */
export const codeOf = ({ code, position }: Pick<Coverable, 'code' | 'position'>): string =>
  code === null ? words.cue.glass(position) : words.glasses.code(code);

/** For titles, notices and lists, where nothing can be held down: the name, or what stands for it. */
export const shownName = (pour: Coverable, blind: boolean): string =>
  isCovered(pour, blind) ? codeOf(pour) : pour.name;
