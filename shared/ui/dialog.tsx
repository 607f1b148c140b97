import type { ComponentChildren } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { Button } from './button.tsx';

interface DialogProps {
  readonly title: string;
  readonly children: ComponentChildren;
  /** Buttons, the safest last: under the thumb. */
  readonly actions?: ComponentChildren;
  /** What the button says that does nothing but close it: the safest one. */
  readonly close?: string;
  /** Asked for by that button, the Escape key or the back gesture. The parent then stops rendering the dialog. */
  readonly onClose: () => void;
}

/**
 * A modal question; it is open for as long as it is rendered. The focus returns to where it came from, also when the
 * dialog leaves the page without having been closed.
 */
export function Dialog({ title, children, actions, close, onClose }: DialogProps) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const leaving = useRef(false);
  useLayoutEffect(() => {
    const element = dialog.current;
    // iOS before 15.4 and Firefox before 98 know no dialogs: there it is a box over the page.
    if (typeof element?.showModal === 'function') element.showModal();
    else element?.classList.add('dialog-plain');
    return () => {
      // Until it is closed everything else is inert and could not take the focus; closing gives it back.
      leaving.current = true;
      element?.close?.();
    };
  }, []);
  return (
    <dialog
      class="dialog"
      ref={dialog}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      // A browser may close without asking when Escape comes twice; the parent must hear of that too.
      onClose={() => {
        if (!leaving.current) onClose();
      }}
    >
      <h2 id={id}>{title}</h2>
      <div class="dialog-body">{children}</div>
      <div class="thumb-bar">
        {actions}
        {close !== undefined && (
          <Button kind="primary" onPress={onClose}>
            {close}
          </Button>
        )}
      </div>
    </dialog>
  );
}
