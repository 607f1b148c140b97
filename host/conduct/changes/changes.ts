import { AddSheet, MendSheet, SwapSheet } from './bottle-sheets.tsx';
import { CueFields } from './cue-fields.tsx';
import { OrderSheet } from './order-sheet.tsx';
import { TitleSheet } from './title-sheet.tsx';

export const changes = { AddSheet, CueFields, MendSheet, OrderSheet, SwapSheet, TitleSheet };
