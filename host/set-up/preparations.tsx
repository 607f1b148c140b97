import { waysOf } from '../../core/drinks/drink-ways.ts';
import type { Drink } from '../../core/tasting.ts';
import { Notice } from '../../shared/ui/notice.tsx';
import { words } from '../language.ts';

/** What lies on each place, and what a host owes to the people who sit there. */
export function Preparations({ drink }: { readonly drink: Drink }) {
  const { glass, lids, water, spit, white, paper, bread } = words.doors.placeItems;
  const places = [glass, ...(waysOf[drink].lids ? [lids] : []), water, spit, white, paper, bread];
  return (
    <section class="doors-ready">
      <div>
        <h2>{words.doors.places}</h2>
        <ul class="marks">
          {places.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      </div>
      <Notice kind="caution" title={words.doors.care}>
        <ul class="marks">
          {Object.entries(words.doors.careItems).map(([name, sentence]) => (
            <li key={name}>{sentence}</li>
          ))}
        </ul>
      </Notice>
    </section>
  );
}
