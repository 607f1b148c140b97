import type { CueId, PourId, SeatId } from '../../core/ids.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../core/session/views/host.ts';
import type { EveningContext } from '../evening/evening-context.ts';
import type { Table } from '../evening/table.ts';
import type { HostActions } from './actions/host-actions.ts';

/** What lies over the room's page, one thing at a time. */
export type Drawer =
  | { readonly shows: 'remind' }
  | { readonly shows: 'pause' }
  | { readonly shows: 'glasses' }
  | { readonly shows: 'doorway' }
  | { readonly shows: 'more' }
  | { readonly shows: 'finish' }
  | { readonly shows: 'finish-by' }
  | { readonly shows: 'keys' }
  | { readonly shows: 'whole-table' }
  | { readonly shows: 'care'; readonly seat: SeatId | null }
  | { readonly shows: 'seat'; readonly seat: SeatId }
  | { readonly shows: 'swap' | 'mend'; readonly pour: PourId }
  | { readonly shows: 'add-pour' }
  | { readonly shows: 'reorder' }
  | { readonly shows: 'title' }
  | { readonly shows: 'jump'; readonly cue: CueId };

export type OpenDrawer = (drawer: Drawer) => void;

/** What every drawer is given. */
export interface DrawerProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
  readonly table: Table;
  readonly actions: HostActions;
  readonly onOpen: OpenDrawer;
  readonly onClose: () => void;
}

/** What a button in a drawer does: the drawer is put away first. */
export function putAway(onClose: () => void, act: () => void): () => void {
  return () => {
    onClose();
    act();
  };
}
