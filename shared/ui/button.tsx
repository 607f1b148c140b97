import type { ComponentChildren } from 'preact';

interface ButtonProps {
  /** Its words; an icon may stand before or after them. */
  readonly children: ComponentChildren;
  readonly onPress: () => void;
  /** One primary to a screen. Danger is for what takes something away, and still wants an undo. */
  readonly kind?: 'primary' | 'plain' | 'quiet' | 'danger' | undefined;
  /** Big is the one thing under the thumb. */
  readonly size?: 'normal' | 'big' | undefined;
  /** It has been pressed and the answer is on its way. It keeps the focus and takes no second press. */
  readonly busy?: boolean | undefined;
  readonly disabled?: boolean | undefined;
  /** For a button that stays down, such as a raised hand. */
  readonly pressed?: boolean | undefined;
  /** Only where the words alone do not say enough, such as one of many buttons called the same. */
  readonly label?: string | undefined;
}

export function Button(props: ButtonProps) {
  const { children, onPress, kind = 'plain', size = 'normal', busy, disabled, pressed, label } = props;
  return (
    <button
      type="button"
      class={`button button-${kind}${size === 'big' ? ' button-big' : ''}`}
      disabled={disabled}
      aria-disabled={busy ? true : undefined}
      aria-busy={busy ? true : undefined}
      aria-pressed={pressed}
      aria-label={label}
      onClick={() => {
        if (!busy) onPress();
      }}
    >
      {children}
    </button>
  );
}
