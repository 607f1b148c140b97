import type { SeatPass } from '../../shared/seats/seat-link.ts';
import type { SeatView, StageView } from '../../shared/wire/views.ts';
import { deviceStorage, nameOnDevice } from '../page/device-storage.ts';

/** The room as this phone saw it last: enough to open its own notes while the room cannot be reached. */
export interface KeptStage {
  readonly stage: StageView;
  readonly own: SeatView;
}

const nameOf = (pass: SeatPass): string => nameOnDevice('stage', pass);

export function keepStage(pass: SeatPass, kept: KeptStage): void {
  try {
    deviceStorage().setItem(nameOf(pass), JSON.stringify(kept));
  } catch {
    // Without it the notes open again when the room is back.
  }
}

export function keptStage(pass: SeatPass): KeptStage | undefined {
  try {
    const kept: unknown = JSON.parse(deviceStorage().getItem(nameOf(pass)) ?? 'null');
    return isKeptStage(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Another version may have written it: what the notes are opened with must be there. */
function isKeptStage(value: unknown): value is KeptStage {
  const { stage, own } = (value ?? {}) as Partial<Record<keyof KeptStage, Partial<StageView & SeatView>>>;
  return Array.isArray(stage?.glasses) && Array.isArray(stage.sealed) && typeof own?.name === 'string';
}
