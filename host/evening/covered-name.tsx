import type { ComponentChildren } from 'preact';
import { Icon } from '../../shared/ui/icon.tsx';
import { look } from '../../shared/ui/strokes.ts';
import { words } from '../language.ts';
import { useHeld } from './use-held.ts';

interface CoveredProps {
  /** What stands there meanwhile: a code, or a number. */
  readonly instead: string;
  readonly covered: boolean;
  /** What is under the cover. */
  readonly children: ComponentChildren;
}

/**
 * Something that only the host may see, under a finger held down: it shows above the finger and is gone with it. With a
 * keyboard, Enter or the space bar is held. It is never read out by itself, for a tablet that speaks betrays as well.
 */
export function Covered({ instead, covered, children }: CoveredProps) {
  const { held, hold } = useHeld();
  if (!covered) return <>{children}</>;
  return (
    <span class="cover">
      <button type="button" class="cover-hold" {...hold}>
        <Icon of={look} />
        <span>
          {instead}
          <span class="visually-hidden"> {words.cover.hold}</span>
        </span>
      </button>
      {held && <span class="cover-under">{children}</span>}
    </span>
  );
}

/** A name as it stands on the host's pages of a blind evening. */
export function CoveredName({
  name,
  instead,
  covered,
}: Omit<CoveredProps, 'children'> & { readonly name: string }) {
  return (
    <Covered instead={instead} covered={covered}>
      <bdi>{name}</bdi>
    </Covered>
  );
}
