import { bowlPath, glassBox, liquidPath, stemPath } from './glass-shape.ts';

interface GlassDrawingProps {
  /** Height of the surface in units of glassBox; a clean glass has none. */
  readonly level?: number | undefined;
}

/** The strokes of one glass, for use inside an svg. */
export function GlassDrawing({ level }: GlassDrawingProps) {
  const liquid = level === undefined ? '' : liquidPath(level);
  return (
    <>
      {liquid && <path class="glass-liquid" d={liquid} />}
      <path class="glass-line" d={bowlPath} />
      <path class="glass-line" d={stemPath} />
    </>
  );
}

/** One glass as a picture of its own; the words stand beside it. */
export function StemmedGlass({ level }: GlassDrawingProps) {
  return (
    <svg
      class="glass"
      viewBox={`0 0 ${glassBox.width} ${glassBox.height}`}
      aria-hidden="true"
      focusable="false"
    >
      <GlassDrawing level={level} />
    </svg>
  );
}
