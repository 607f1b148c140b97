import type { ComponentChildren } from 'preact';

export interface PictureRow {
  readonly key: string;
  readonly name: string;
  /** What the picture shows, for those who do not see it. */
  readonly label: string;
  /** Drawn in per cent of the width, so that nothing is stretched, whatever the screen. */
  readonly drawing: ComponentChildren;
  readonly height?: number;
  /** The figure beside it. */
  readonly figure?: string;
}

/** Rows of a picture: a name, its drawing, its figure. */
export function Rows({ rows }: { readonly rows: readonly PictureRow[] }) {
  return (
    <ul class="rows">
      {rows.map(({ key, name, label, drawing, height = 28, figure }) => (
        <li key={key} class="rows-row">
          <span class="rows-name">{name}</span>
          <svg class="rows-drawing" role="img" aria-label={label} width="100%" height={height}>
            {drawing}
          </svg>
          {figure !== undefined && <span class="rows-figure figures">{figure}</span>}
        </li>
      ))}
    </ul>
  );
}
