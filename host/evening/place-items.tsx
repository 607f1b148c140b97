import { waysOf } from '../../core/drinks/drink-ways.ts';
import type { Drink } from '../../core/tasting.ts';
import { words } from '../language.ts';

/** What lies on each place. */
export function PlaceItems({ drink }: { readonly drink: Drink }) {
  const { glass, lids, water, spit, white, paper, bread } = words.doors.placeItems;
  const places = [glass, ...(waysOf[drink].lids ? [lids] : []), water, spit, white, paper, bread];
  return (
    <div>
      <h2>{words.doors.places}</h2>
      <ul class="marks">
        {places.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    </div>
  );
}
