import type { RoomGuess } from '../../core/panel/guess/room.ts';

/**
 * What stands in rows: the truth always, also where nobody said it, and the values that most people said; what fewer said is
 * counted together, as null. Numbers stay in their order.
 */
export function spreadRows(
  { spread, truth }: RoomGuess,
  most: number,
): { readonly value: RoomGuess['truth'] | null; readonly guests: number }[] {
  const all = spread.some(({ value }) => value === truth) ? spread : [...spread, { value: truth, guests: 0 }];
  const ranked = all.toSorted((one, other) => other.guests - one.guests);
  const kept = new Set([truth, ...ranked.slice(0, most).map(({ value }) => value)]);
  const shown = all.filter(({ value }) => kept.has(value));
  const rest = all.filter(({ value }) => !kept.has(value)).reduce((sum, { guests }) => sum + guests, 0);
  const inOrder =
    typeof truth === 'number' ? shown.toSorted((a, b) => Number(a.value) - Number(b.value)) : shown;
  return rest === 0 ? inOrder : [...inOrder, { value: null, guests: rest }];
}
