interface SwatchDiscProps {
  /** A CSS colour. */
  readonly colour: string;
}

interface SwatchProps extends SwatchDiscProps {
  /** Its name, because a colour alone says nothing to many people and little in candle light. */
  readonly word: string;
}

/** A colour as it looks from above in a glass on white; the mark of a choice whose label is its word. */
export function SwatchDisc({ colour }: SwatchDiscProps) {
  return (
    <svg class="swatch-disc" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <circle class="swatch-card" cx="12" cy="12" r="11.25" />
      <circle cx="12" cy="12" r="8.5" fill={colour} />
    </svg>
  );
}

/** A colour with its word, to be read and not chosen. */
export function Swatch({ colour, word }: SwatchProps) {
  return (
    <span class="swatch">
      <SwatchDisc colour={colour} />
      {word}
    </span>
  );
}
