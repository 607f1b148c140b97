import type { RefObject } from 'preact';
import { useState } from 'preact/hooks';

interface Dragging {
  readonly row: number;
  /** The row above which it would be let go; the number of rows below all. */
  readonly gap: number;
}

/**
 * Moving a row of a list by hand. The pointer is held by the handle, so that a finger may leave it; the buttons beside
 * it do the same without dragging [2.5.7 of WCAG].
 */
export function useRowDrag(list: RefObject<HTMLElement | null>, onDrop: (row: number, gap: number) => void) {
  const [dragging, setDragging] = useState<Dragging | null>(null);
  const gapAt = (y: number): number => {
    const rows = [...(list.current?.children ?? [])];
    const below = rows.findIndex((row) => {
      const { top, height } = row.getBoundingClientRect();
      return y < top + height / 2;
    });
    return below === -1 ? rows.length : below;
  };
  return {
    row: dragging?.row ?? null,
    gap: dragging?.gap ?? null,
    handle: (row: number) => ({
      onPointerDown(event: PointerEvent): void {
        if (event.button !== 0) return;
        (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
        setDragging({ row, gap: row });
      },
      onPointerMove(event: PointerEvent): void {
        if (dragging !== null) setDragging({ row: dragging.row, gap: gapAt(event.clientY) });
      },
      onPointerUp(): void {
        setDragging(null);
        // Let go above or below itself it has not moved.
        if (dragging !== null && dragging.gap !== dragging.row && dragging.gap !== dragging.row + 1) {
          onDrop(dragging.row, dragging.gap);
        }
      },
      onPointerCancel: () => setDragging(null),
    }),
  };
}
