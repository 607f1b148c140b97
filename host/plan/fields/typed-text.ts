import { useEffect, useRef, useState } from 'preact/hooks';

/**
 * The text of a field whose value is stored elsewhere. A change from elsewhere (undo, another device) shows, but not
 * while somebody is in the field: what was stored comes a moment later than what is typed, and on a slow device it would
 * take the last letters back.
 */
export function useTypedText<Value>(value: Value, shown: (value: Value) => string) {
  const [text, setText] = useState(shown(value));
  const [typing, setTyping] = useState(false);
  const last = useRef(value);
  useEffect(() => {
    if (typing || last.current === value) return;
    last.current = value;
    setText(shown(value));
  }, [value, typing]);
  return {
    text,
    setText,
    /** The value that was made of the text. */
    made(of: Value) {
      last.current = of;
    },
    field: { onFocus: () => setTyping(true), onBlur: () => setTyping(false) },
  };
}
