import { useEffect, useMemo, useState } from 'preact/hooks';
import type { TastingId } from '../../core/ids.ts';
import type { Plan } from '../../core/tasting.ts';
import { Icon } from '../../shared/ui/icon.tsx';
import { caution } from '../../shared/ui/notice-strokes.ts';
import { goTo } from '../route.ts';
import { type Part, parts, summaryOf } from './part-summaries.ts';
import { words } from './words.ts';

interface PartListProps {
  readonly plan: Plan;
  /** The one that is open. */
  readonly part: Part;
  readonly tasting: TastingId;
}

/**
 * The list of parts. All that it says is reckoned from the whole plan, so that it follows right after the picture in which
 * what was typed shows: a finger never waits for it.
 */
export function PartList({ plan, part, tasting }: PartListProps) {
  const [shown, setShown] = useState(plan);
  useEffect(() => setShown(plan), [plan]);
  return useMemo(
    () => (
      <ul>
        {parts.map((each) => {
          const summary = summaryOf(each, shown);
          return (
            <li key={each}>
              <button
                type="button"
                class="bare rail-part"
                aria-current={each === part ? 'true' : undefined}
                onClick={() => goTo({ page: 'plan', tasting, part: each })}
              >
                <span class="rail-title">{words.parts[each]}</span>
                <span class={summary.loud ? 'rail-summary rail-loud' : 'rail-summary'}>
                  {summary.loud && <Icon of={caution} />}
                  {summary.text}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    ),
    [shown, part, tasting],
  );
}
