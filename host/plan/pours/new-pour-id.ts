import { nanoid } from 'nanoid';
import { type PourId, pourId } from '../../../core/ids.ts';

/** Of a pour or an odd-one-out: 48 bits drawn by lot, for it reaches guests while it must tell them nothing [Q4]. */
export const newPourId = (): PourId => pourId(nanoid(8));
