import { useRef, useState } from 'preact/hooks';

export interface Dragged {
  readonly id: string;
  /** How far it has been carried, in CSS pixels. */
  readonly by: number;
  /** The position that it would take if it were let go. */
  readonly to: number;
}

interface Grip {
  readonly id: string;
  readonly from: number;
  readonly startY: number;
  /** Middles of the rows in page coordinates, in the order of the list, as they were at the start. */
  readonly middles: readonly number[];
}

/** Near an edge of the window the page moves along, so many px at each move. */
const edgePx = 90;
const scrollPx = 14;

/**
 * Carrying a row of a list to another place with one finger. Whatever this does, the buttons beside it do too.
 * @param ids of the rows in their order; `rowOf` finds the element of one
 */
export function useDrag(
  ids: readonly string[],
  rowOf: (id: string) => HTMLElement | undefined,
  onDrop: (id: string, to: number) => void,
) {
  const [dragged, setDragged] = useState<Dragged | undefined>();
  const grip = useRef<Grip | undefined>(undefined);

  const at = (event: PointerEvent): Dragged | undefined => {
    const held = grip.current;
    if (held === undefined) return undefined;
    const y = event.clientY + window.scrollY;
    const to = held.middles.filter((middle, index) => index !== held.from && middle < y).length;
    return { id: held.id, by: y - held.startY, to };
  };
  const letGo = (): void => {
    grip.current = undefined;
    setDragged(undefined);
  };
  return {
    dragged,
    handle: (id: string) => ({
      onPointerDown: (event: PointerEvent) => {
        if (event.button !== 0 || !(event.currentTarget instanceof HTMLElement)) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        const middles = ids.map((each) => {
          const box = rowOf(each)?.getBoundingClientRect();
          return box === undefined ? 0 : box.top + box.height / 2 + window.scrollY;
        });
        grip.current = { id, from: ids.indexOf(id), startY: event.clientY + window.scrollY, middles };
        setDragged(at(event));
      },
      onPointerMove: (event: PointerEvent) => {
        if (grip.current === undefined) return;
        if (event.clientY < edgePx) window.scrollBy(0, -scrollPx);
        if (event.clientY > window.innerHeight - edgePx) window.scrollBy(0, scrollPx);
        setDragged(at(event));
      },
      onPointerUp: (event: PointerEvent) => {
        const now = at(event);
        const from = grip.current?.from;
        letGo();
        if (now !== undefined && now.to !== from) onDrop(now.id, now.to);
      },
      onPointerCancel: letGo,
    }),
  };
}
