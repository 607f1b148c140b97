import type { NamedPour } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { factsOf } from './facts-of.ts';

/** The facts in a line or two. */
export function PourFacts({ pour }: { readonly pour: NamedPour }) {
  return <p class="soft small">{factsOf(words, pour).join(' · ')}</p>;
}
