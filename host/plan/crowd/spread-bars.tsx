import { levels } from '../../../core/drinks/drink-kinds.ts';
import type { CrowdSpread } from '../../../core/planning/theme/crowd.ts';
import { words } from '../words.ts';

/** How many of each kind answered: the words and the number say it, the bar beside them shows it. */
export function SpreadBars({ spread }: { readonly spread: CrowdSpread }) {
  const said = words.survey;
  const rows = [
    ...levels.map((level) => ({ key: level, label: words.guests.levels[level], count: spread[level] })),
    ...(spread.notPlaced > 0 ? [{ key: 'not-placed', label: said.notPlaced, count: spread.notPlaced }] : []),
  ];
  const most = Math.max(1, ...rows.map(({ count }) => count));
  return (
    <ul class="stack-close spread" aria-label={said.spread}>
      {rows.map(({ key, label, count }) => (
        <li key={key}>
          <span>{label}</span>
          <span class="spread-count figures">{count}</span>
          <span class="spread-bar" aria-hidden="true" style={{ inlineSize: `${(count / most) * 100}%` }} />
        </li>
      ))}
    </ul>
  );
}
