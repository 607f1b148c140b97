import { keepJson, keptJson } from '../../shared/page/device-storage.ts';
import type { SeatPass } from '../../shared/seats/seat-link.ts';
import type { SeatView, StageView } from '../../shared/wire/views.ts';
import { nameOnDevice } from '../page/device-storage.ts';

/** The room as this phone saw it last: enough to open its own notes while the room cannot be reached. */
export interface KeptStage {
  readonly stage: StageView;
  readonly own: SeatView;
}

const nameOf = (pass: SeatPass): string => nameOnDevice('stage', pass);

/** Where it cannot be kept the notes open again when the room is back. */
export const keepStage = (pass: SeatPass, kept: KeptStage): void => void keepJson(nameOf(pass), kept);

export function keptStage(pass: SeatPass): KeptStage | undefined {
  const kept = keptJson(nameOf(pass));
  return isKeptStage(kept) ? kept : undefined;
}

/** Another version may have written it: what the notes are opened with must be there. */
function isKeptStage(value: unknown): value is KeptStage {
  const { stage, own } = (value ?? {}) as Partial<Record<keyof KeptStage, Partial<StageView & SeatView>>>;
  return Array.isArray(stage?.glasses) && Array.isArray(stage.sealed) && typeof own?.name === 'string';
}
