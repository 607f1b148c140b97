import type { Drink } from '../../core/tasting.ts';
import { allergenWords } from '../../shared/language/en/allergens.ts';
import { Notice } from '../../shared/ui/notice.tsx';
import { PlaceItems } from '../evening/place-items.tsx';
import { words } from '../language.ts';

/** What lies on each place, and what a host owes to the people who sit there. */
export function Preparations({ drink }: { readonly drink: Drink }) {
  return (
    <section class="doors-ready">
      <PlaceItems drink={drink} />
      <Notice kind="caution" title={words.doors.care}>
        <ul class="marks">
          {Object.entries(words.doors.careItems).map(([name, sentence]) => (
            <li key={name}>{sentence}</li>
          ))}
          <li>{allergenWords.prepare}</li>
        </ul>
      </Notice>
    </section>
  );
}
