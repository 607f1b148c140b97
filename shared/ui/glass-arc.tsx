import { type ArcPlace, arcBox, arcPlaces, arcTop, glassHeight, raised } from './glass-places.ts';
import { glassBox, pourY } from './glass-shape.ts';
import { GlassDrawing } from './stemmed-glass.tsx';

export type ArcGlass = 'waiting' | 'current' | 'done';

interface GlassArcProps {
  /** In the order of tasting; up to 16. */
  readonly glasses: readonly ArcGlass[];
  /** First glass at the right hand, as a left-hander's place is laid. */
  readonly mirrored?: boolean | undefined;
  /** The whole picture in words, such as which glass of how many. */
  readonly label: string;
  /** A few of those words for the eye, in the hollow of the arc. */
  readonly caption?: string | undefined;
}

/** The guest's own mat: full glasses wait, the one in the hand is raised from its ring, emptied ones are left. */
export function GlassArc({ glasses, mirrored = false, label, caption }: GlassArcProps) {
  const places = arcPlaces(glasses.length, mirrored);
  const top = arcTop(places);
  return (
    <div class="arc">
      <svg
        class="arc-picture"
        viewBox={`0 ${top} ${arcBox.width} ${arcBox.bottom - top}`}
        role="img"
        aria-label={label}
      >
        {places.map((place, index) => (
          <ArcGlassDrawing key={place.x} place={place} glass={glasses[index] ?? 'waiting'} />
        ))}
      </svg>
      {caption && (
        <p class="arc-caption" aria-hidden="true">
          {caption}
        </p>
      )}
    </div>
  );
}

function ArcGlassDrawing({ place, glass }: { readonly place: ArcPlace; readonly glass: ArcGlass }) {
  const { x, y, width } = glass === 'current' ? raised(place) : place;
  const scale = width / glassBox.width;
  return (
    <g class={`arc-${glass}`}>
      {glass === 'current' && (
        <ellipse class="arc-ring" cx={place.x} cy={place.y} rx={place.width * 0.38} ry={place.width * 0.11} />
      )}
      <g transform={`translate(${x - width / 2} ${y - glassHeight(width)}) scale(${scale})`}>
        <GlassDrawing level={glass === 'done' ? undefined : pourY} />
      </g>
    </g>
  );
}
