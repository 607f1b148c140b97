import { useEffect, useRef, useState } from 'preact/hooks';
import { numbersFixed, withFixedNumbers } from '../../core/running-order/glass-numbers.ts';
import type { FailureCode } from '../../shared/wire/answer.ts';
import type { EveningContext } from '../evening/evening-context.ts';
import type { PaperKind } from '../paper-kind.ts';

interface KeptNumbers {
  /** Why the numbers on the last print could not be kept; nothing where they are, or where none are to be kept. */
  readonly failed: FailureCode | undefined;
  readonly again: () => void;
}

/**
 * [P23] What is on paper keeps its number from here on, whichever way it was printed: the page's button, a key, the
 * browser's menu. While guests sit the session keeps the numbers already.
 */
export function useKeptNumbers(evening: EveningContext, kind: PaperKind): KeptNumbers {
  const stored = useRef(evening.stored);
  const [failed, setFailed] = useState<FailureCode>();

  const keep = async (): Promise<void> => {
    const { stage, tasting, plan, revision } = stored.current;
    if (stage !== 'planned' || kind === 'shopping' || numbersFixed(plan)) return;
    const numbered = withFixedNumbers(plan);
    const answer = await evening.app.api.savePlan(tasting, { plan: numbered, base: revision });
    if (answer.ok) stored.current = { ...stored.current, plan: numbered, revision: answer.body.revision };
    setFailed(answer.ok ? undefined : answer.code);
  };

  useEffect(() => {
    const printed = () => void keep();
    window.addEventListener('beforeprint', printed);
    return () => window.removeEventListener('beforeprint', printed);
  });
  // A plan that was changed meanwhile is not the one on this paper: only a print of the new one helps.
  const again = () => (failed === 'plan-changed' ? window.location.reload() : void keep());
  return { failed, again };
}
