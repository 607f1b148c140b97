interface IconProps {
  /** A path from strokes.ts. */
  readonly of: string;
  /** Points along the line of reading, so it turns round where script runs right to left. */
  readonly turns?: boolean | undefined;
}

/** A small picture beside a word. It is hidden from screen readers, which have the word. */
export function Icon({ of, turns }: IconProps) {
  return (
    <svg class={turns ? 'icon icon-turns' : 'icon'} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={of} />
    </svg>
  );
}
