import { useEffect, useRef } from 'preact/hooks';
import { useRoom } from '../room/room.ts';

/** A tap on a button takes the focus from the field first: the screen waits until the tap has been heard. */
const afterTap = 350;

let leaving: ReturnType<typeof setTimeout> | undefined;

/** Tells the screen when somebody writes, so that no change of cue takes the keyboard away [F5]. */
export function useWritingLock() {
  const { lock } = useRoom();
  const inside = useRef(false);
  const leave = (): void => {
    inside.current = false;
    clearTimeout(leaving);
    leaving = setTimeout(lock.leaveField, afterTap);
  };
  // A field that leaves the page with the focus in it is told of no blur.
  useEffect(
    () => () => {
      if (inside.current) leave();
    },
    [],
  );
  return {
    key: lock.key,
    leave,
    enter(): void {
      inside.current = true;
      clearTimeout(leaving);
      lock.enterField();
    },
  };
}
