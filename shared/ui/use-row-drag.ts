import { useRef, useState } from 'preact/hooks';

export interface Dragged {
  /** From 0. */
  readonly row: number;
  /** The row above which it would be let go; the number of rows below all. */
  readonly gap: number;
  /** The other row on which it is held; null in a gap, and where rows cannot be let go on each other. */
  readonly onto: number | null;
  /** How far it has been carried, in CSS pixels. */
  readonly by: number;
}

/** Where it would stand once it is let go; where it stood, in the two gaps beside itself. */
export const placeOfDrop = ({ row, gap }: Pick<Dragged, 'row' | 'gap'>): number =>
  gap > row ? gap - 1 : gap;

interface Grip {
  readonly row: number;
  readonly startY: number;
  /** Middles of the rows in page coordinates, as they were at the start. */
  readonly middles: readonly number[];
  /** Of a row, in CSS pixels. */
  readonly height: number;
}

/** Of the height of a row: so far from its middle one is on it, and further in the gap beside it. */
const reach = 0.28;

/** Near an edge of the window the page moves along, so many px at each move. */
const edgePx = 90;
const scrollPx = 14;

/**
 * Carrying a row of a list to another place with one finger. The pointer is held by the handle, so that a finger may leave
 * it; the buttons beside it do the same without dragging [2.5.7 of WCAG].
 * @param rows in their order
 */
export function useRowDrag(
  rows: () => readonly Element[],
  onDrop: (drop: Pick<Dragged, 'row' | 'gap' | 'onto'>) => void,
  { ontoRows = false }: { readonly ontoRows?: boolean } = {},
) {
  const [dragged, setDragged] = useState<Dragged>();
  const grip = useRef<Grip | undefined>(undefined);
  const at = ({ clientY }: PointerEvent, { row, startY, middles, height }: Grip): Dragged => {
    const y = clientY + window.scrollY;
    const under = middles.findIndex((middle) => Math.abs(middle - y) < reach * height);
    const onto = ontoRows && under !== -1 && under !== row ? under : null;
    return { row, gap: middles.filter((middle) => middle < y).length, onto, by: y - startY };
  };
  const letGo = (): void => {
    grip.current = undefined;
    setDragged(undefined);
  };
  return {
    dragged,
    handle: (row: number) => ({
      onPointerDown(event: PointerEvent): void {
        if (event.button !== 0 || !(event.currentTarget instanceof HTMLElement)) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        const height = rows()[row]?.getBoundingClientRect().height ?? 0;
        const middles = rows().map((each) => {
          const { top, height } = each.getBoundingClientRect();
          return top + height / 2 + window.scrollY;
        });
        grip.current = { row, startY: event.clientY + window.scrollY, middles, height };
        setDragged(at(event, grip.current));
      },
      onPointerMove(event: PointerEvent): void {
        if (grip.current === undefined) return;
        if (event.clientY < edgePx) window.scrollBy(0, -scrollPx);
        if (event.clientY > window.innerHeight - edgePx) window.scrollBy(0, scrollPx);
        setDragged(at(event, grip.current));
      },
      onPointerUp(event: PointerEvent): void {
        const drop = grip.current && at(event, grip.current);
        letGo();
        if (drop !== undefined && (drop.onto !== null || placeOfDrop(drop) !== drop.row)) onDrop(drop);
      },
      onPointerCancel: letGo,
    }),
  };
}
