import { serviceTemperatureOf } from '../../drinks/service-temperature.ts';
import type { PhotoId, PourId } from '../../ids.ts';
import type { Drink, Pour } from '../../tasting.ts';
import type { Evening } from '../state.ts';

/** What guests may know of a pour: its code only, or its facts once it may be named [Q4]. */
export type PourCard = CodedPour | NamedPour;

interface CodedPour {
  readonly kind: 'coded';
  readonly id: PourId;
  readonly drink: Drink;
  /** Three digits, where the tasting has codes. */
  readonly code: string | null;
}

export interface NamedPour {
  readonly kind: 'named';
  readonly id: PourId;
  readonly drink: Drink;
  readonly code: string | null;
  readonly name: string;
  readonly producer: string | null;
  readonly region: string | null;
  readonly country: string | null;
  readonly style: string | null;
  readonly ageYears: number | null;
  readonly vintage: number | null;
  readonly abv: number | null;
  readonly cask: string | null;
  readonly sparkling: boolean;
  /** The range at which it is served, in °C. */
  readonly serve: { readonly minC: number; readonly maxC: number } | null;
  readonly link: string | null;
  readonly story: string | null;
  /** For reading at home. */
  readonly reading: readonly { readonly title: string; readonly link: string }[];
  readonly photos: { readonly front: PhotoId | null; readonly back: PhotoId | null };
}

/** A pour of an open tasting has its name as soon as it is reached; a blind one waits for its reveal. */
function pourCard(session: Evening, pour: Pour): PourCard {
  const mayBeNamed = !session.plan.blind || session.revealed.includes(pour.id);
  const code = session.plan.codes[pour.id] ?? null;
  return mayBeNamed ? namedPour(pour, code) : { kind: 'coded', id: pour.id, drink: pour.drink, code };
}

/** The card of a pour by its id; null for an id that the plan does not have. */
export function cardOf(session: Evening, id: PourId): PourCard | null {
  const pour = session.plan.pours.find((each) => each.id === id);
  return pour === undefined ? null : pourCard(session, pour);
}

export const namedPour = (pour: Pour, code: string | null): NamedPour => ({
  kind: 'named',
  id: pour.id,
  drink: pour.drink,
  code,
  name: pour.name,
  producer: pour.producer ?? null,
  region: pour.region ?? null,
  country: pour.country ?? null,
  style: pour.style ?? null,
  ageYears: pour.ageYears ?? null,
  vintage: pour.vintage ?? null,
  abv: pour.abv ?? null,
  cask: pour.cask ?? null,
  sparkling: pour.sparkling === true,
  serve: servedAt(pour),
  link: pour.link ?? null,
  story: pour.story ?? null,
  reading: pour.reading ?? [],
  photos: { front: pour.photos?.front ?? null, back: pour.photos?.back ?? null },
});

function servedAt(pour: Pour): NamedPour['serve'] {
  const range = serviceTemperatureOf(pour);
  return range && { minC: range.minC, maxC: range.maxC };
}
