import type { PlaceSetting, PlaceThing } from '../../../core/planning/table/place-setting.ts';
import { words } from '../words.ts';

interface PlaceDrawingProps {
  readonly place: PlaceSetting;
  /** The whole picture in words. */
  readonly label: string;
}

/** A place from above, one unit of the drawing to a millimetre, the guest at its lower edge. */
export function PlaceDrawing({ place, label }: PlaceDrawingProps) {
  const mat = place.things.find(({ what }) => what === 'mat');
  return (
    <svg
      class="place"
      viewBox={`-4 -4 ${place.widthMm + 8} ${place.depthMm + 8}`}
      role="img"
      aria-label={label}
    >
      <rect class="place-table" x="0" y="0" width={place.widthMm} height={place.depthMm} />
      {place.things.map((thing) => (
        <Thing key={thing.what} thing={thing} />
      ))}
      {mat &&
        place.mat.circles.map((circle) => (
          <g key={circle.glass} transform={`translate(${mat.xMm} ${mat.yMm})`}>
            <circle class="place-glass" cx={circle.xMm} cy={circle.yMm} r={circle.diameterMm / 2} />
            <text class="place-label" x={circle.xMm} y={circle.yMm}>
              {circle.label}
            </text>
          </g>
        ))}
    </svg>
  );
}

function Thing({ thing }: { readonly thing: PlaceThing }) {
  const name = words.figures.table.things[thing.what];
  switch (thing.shape) {
    case 'circle':
      return (
        <>
          <circle class={`place-${thing.what}`} cx={thing.xMm} cy={thing.yMm} r={thing.diameterMm / 2} />
          <text class="place-name" x={thing.xMm} y={thing.yMm}>
            {name}
          </text>
        </>
      );
    case 'rectangle':
      return (
        <>
          <rect
            class={`place-${thing.what}`}
            x={thing.xMm}
            y={thing.yMm}
            width={thing.widthMm}
            height={thing.heightMm}
          />
          {thing.what !== 'mat' && (
            <text class="place-name" x={thing.xMm + thing.widthMm / 2} y={thing.yMm + thing.heightMm / 2}>
              {name}
            </text>
          )}
        </>
      );
    default:
      return thing satisfies never;
  }
}
