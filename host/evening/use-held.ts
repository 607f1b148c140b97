import { useSignal } from '@preact/signals';

/**
 * For what only the host may see: it shows while a finger is held down, and is gone with it. With a keyboard Enter or the
 * space bar is held.
 */
export function useHeld() {
  const held = useSignal(false);
  const hide = (): void => {
    held.value = false;
  };
  const show = (): void => {
    held.value = true;
  };
  const isPress = ({ key }: KeyboardEvent): boolean => key === 'Enter' || key === ' ';
  return {
    held: held.value,
    hold: {
      onPointerDown: (event: PointerEvent) => {
        // The finger may slide off the button; it stays uncovered until the finger is lifted.
        if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId);
        show();
      },
      onPointerUp: hide,
      onPointerCancel: hide,
      onLostPointerCapture: hide,
      onContextMenu: (event: Event) => event.preventDefault(),
      onBlur: hide,
      onKeyDown: (event: KeyboardEvent) => {
        if (!isPress(event)) return;
        event.preventDefault();
        show();
      },
      onKeyUp: (event: KeyboardEvent) => {
        if (isPress(event)) event.preventDefault();
        hide();
      },
    },
  };
}
