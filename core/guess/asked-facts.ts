import { type GuessFact, guessFacts } from '../panel/guess/guess.ts';
import type { Plan, Pour } from '../tasting.ts';

/** A fact that fewer of the pours have is not asked: too often there would be no answer. */
const leastKnown = 0.5;

/** The facts that guests are asked for, the same for every glass: those that the plan knows, and the theme does not tell. */
export function askedFacts(plan: Pick<Plan, 'blind' | 'guess' | 'pours' | 'theme'>): GuessFact[] {
  if (!plan.blind || !plan.guess.on || plan.pours.length === 0) return [];
  const held = plan.theme.kind === 'horizontal' ? plan.theme.held : undefined;
  const told = held === 'style' ? 'style' : held === 'region' ? 'origin' : undefined;
  return guessFacts.filter(
    (fact) =>
      fact !== told &&
      !plan.guess.without.includes(fact) &&
      plan.pours.filter(knows[fact]).length >= plan.pours.length * leastKnown,
  );
}

const knows: Readonly<Record<GuessFact, (pour: Pour) => boolean>> = {
  style: ({ style }) => Boolean(style),
  origin: ({ country, region }) => Boolean(country) || Boolean(region),
  vintage: ({ vintage }) => vintage !== undefined,
  age: ({ ageYears }) => ageYears !== undefined,
  abv: ({ abv }) => abv !== undefined,
  price: ({ priceMinor }) => Boolean(priceMinor),
};
