import type { SeatView } from '../../shared/wire/views.ts';
import { words } from '../language.ts';

export function GroundRules({ own }: { readonly own: SeatView }) {
  return (
    <div class="stack">
      {own.groundRulesAccepted && <p class="accepted">{words.rules.accepted}</p>}
      <ul class="plain-list" aria-label={words.rules.title}>
        {words.rules.list.map((rule) => (
          <li key={rule}>{rule}</li>
        ))}
      </ul>
    </div>
  );
}
