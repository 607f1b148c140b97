import type { PourId } from '../../core/ids.ts';
import { addsDrops, type Cue, pourOf } from '../../core/running-order/cue.ts';
import type { HostPour } from '../../core/session/views/host.ts';
import { words } from '../language.ts';

/** The one verb of a cue: what everybody does. */
export function verbOf(cue: Cue): string {
  switch (cue.kind) {
    case 'step':
      if (addsDrops(cue)) return words.cue.drops;
      return cue.sense === undefined ? words.cue.steps[cue.step] : words.cue.writes[cue.sense];
    case 'practice':
      return words.cue.practice(cue.step);
    case 'break':
      return cue.called ? words.cue.calledBreak : words.cue.kinds.break;
    default:
      return words.cue.kinds[cue.kind];
  }
}

/** Numbers of the glasses as they stand on the mats: a dropped one leaves a gap [P23]. */
export function placesOf(pours: readonly HostPour[]): ReadonlyMap<PourId, number> {
  return new Map(pours.filter((pour) => !pour.dropped).map((pour) => [pour.id, pour.position]));
}

/** By its place alone, where there is room for little; by its code where it has none. */
export function shortGlassOf(pours: readonly HostPour[], pour: PourId): string {
  const place = placesOf(pours).get(pour);
  return place === undefined ? glassOf(pours, pour) : words.cue.glass(place);
}

/** A glass without its name: by its place, and its code where it has one. */
export function glassOf(pours: readonly HostPour[], pour: PourId): string {
  const place = placesOf(pours).get(pour);
  const code = pours.find(({ id }) => id === pour)?.code ?? null;
  return [
    ...(place === undefined ? [] : [words.cue.glass(place)]),
    ...(code === null ? [] : [words.glasses.code(code)]),
  ].join(' · ');
}

/** Where in the evening a cue stands, beside its verb: `Glass 2 of 6 · flight 1 · first pass`. */
export function whereOf(cue: Cue, pours: readonly HostPour[]): string {
  const places = placesOf(pours);
  const pour = pours.find(({ id }) => id === pourOf(cue));
  if (pour !== undefined) {
    return [
      words.cue.glassOf(pour.position, Math.max(...places.values(), pour.position)),
      words.cue.flight(pour.flight + 1),
      ...(cue.kind === 'step' ? [words.cue.passes[cue.pass]] : []),
    ].join(' · ');
  }
  if (cue.kind === 'odd-one-out') return words.cue.threeGlasses;
  return 'pours' in cue ? words.cue.glasses(cue.pours.flatMap((id) => places.get(id) ?? [])) : '';
}

/** Short, for the big button and the list: the glass is named only where it changes. */
export function nameOf(cue: Cue, pours: readonly HostPour[], from?: Cue): string {
  const pour = pourOf(cue);
  if (pour === undefined || (from !== undefined && pourOf(from) === pour)) return verbOf(cue);
  const place = placesOf(pours).get(pour);
  return place === undefined ? verbOf(cue) : `${words.cue.glass(place)}: ${verbOf(cue)}`;
}
