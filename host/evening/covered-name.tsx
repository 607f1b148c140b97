import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { Icon } from '../../shared/ui/icon.tsx';
import { look } from '../../shared/ui/strokes.ts';
import { words } from '../language.ts';

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
  const held = useSignal(false);
  if (!covered) return <>{children}</>;
  const show = (): void => {
    held.value = true;
  };
  const hide = (): void => {
    held.value = false;
  };
  const isPress = ({ key }: KeyboardEvent): boolean => key === 'Enter' || key === ' ';
  return (
    <span class="cover">
      <button
        type="button"
        class="cover-hold"
        onPointerDown={(event) => {
          // The finger may slide off the small button; the name stays until it is lifted.
          event.currentTarget.setPointerCapture(event.pointerId);
          show();
        }}
        onPointerUp={hide}
        onPointerCancel={hide}
        onLostPointerCapture={hide}
        onContextMenu={(event) => event.preventDefault()}
        onBlur={hide}
        onKeyDown={(event) => {
          if (!isPress(event)) return;
          event.preventDefault();
          show();
        }}
        onKeyUp={(event) => {
          if (isPress(event)) event.preventDefault();
          hide();
        }}
      >
        <Icon of={look} />
        <span>
          {instead}
          <span class="visually-hidden"> {words.cover.hold}</span>
        </span>
      </button>
      {held.value && <span class="cover-under">{children}</span>}
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
