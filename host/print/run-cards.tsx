import type { Cue } from '../../core/running-order/cue.ts';
import type { Plan, Pour } from '../../core/tasting.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { labelOf } from './mat-sheets.ts';

interface RunCardsProps {
  readonly plan: Plan;
  readonly cue: Cue;
  readonly columns: number;
}

/**
 * What the host tells of each glass, where it is told: at the names, and where nothing was blind in the talk. A pour of which
 * nothing but its name is known needs no card.
 */
export function RunCards({ plan, cue, columns }: RunCardsProps) {
  if (cue.kind !== 'reveal' && (plan.blind || cue.kind !== 'discussion')) return null;
  const cards = cue.pours.flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? []).filter(hasMore);
  return cards.length === 0 ? null : (
    <tr class="run-cards">
      <td colSpan={columns}>
        {cards.map((pour) => (
          <RunCard key={pour.id} plan={plan} pour={pour} />
        ))}
      </td>
    </tr>
  );
}

const hasMore = (pour: Pour): boolean =>
  (pour.story ?? '') !== '' || pour.photos?.front !== undefined || factsOf(pour).length > 0;

function RunCard({ plan, pour }: { readonly plan: Plan; readonly pour: Pour }) {
  const position = plan.pours.indexOf(pour) + 1;
  const label = labelOf(plan, pour);
  const photo = pour.photos?.front;
  return (
    <article class="run-card">
      {photo !== undefined && <img src={`/photos/${encodeURIComponent(photo)}`} alt="" />}
      <h3>
        {[
          paperWords.glass(position),
          ...(plan.blind && label !== String(position) ? [label] : []),
          pour.name,
        ].join(' · ')}
      </h3>
      <p>{factsOf(pour).join(' · ')}</p>
      {pour.story && (
        <p class="run-story" dir="auto">
          {pour.story}
        </p>
      )}
    </article>
  );
}

/** What can be said without a unit in front of it; the strength stands at the glass. */
const factsOf = ({ producer, region, country, style, vintage, cask }: Pour): string[] =>
  [producer, region, country, style, vintage === undefined ? undefined : String(vintage), cask].flatMap(
    (fact) => (fact === undefined || fact === '' ? [] : [fact]),
  );
