import type { MatCircle } from '../../core/planning/table/mat-layout.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { wrapped } from './line-wrap.ts';
import type { MatToPrint } from './mat-sheets.ts';

/** Sizes of letters in mm. */
const captionMm = 3.2;
const nameMm = 3.6;
const rulerMm = 100;
/** A capital or digit of a serif reaches about this share of its size above the line. */
const capHeight = 0.7;

interface MatDrawingProps {
  readonly mat: MatToPrint;
  readonly caption: string;
}

/** A mat in millimetres: what is one unit here is 1 mm on paper. The line of a circle runs on the foot's own edge. */
export function MatDrawing({ mat, caption }: MatDrawingProps) {
  const { widthMm, heightMm, circles, labelHeightMm } = mat.layout;
  return (
    <svg
      class="mat"
      width={`${widthMm}mm`}
      height={`${heightMm}mm`}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      role="img"
      aria-label={caption}
    >
      <text class="mat-caption" x="10" y={7 + captionMm * capHeight} font-size={captionMm}>
        {caption}
      </text>
      {circles.map((circle, index) => (
        <Circle
          key={circle.glass}
          circle={circle}
          labelMm={labelHeightMm}
          name={mat.inside[index] ?? ''}
          numbered={circle.label !== String(circle.glass)}
        />
      ))}
      <Ruler x={(widthMm - rulerMm) / 2} y={heightMm - 6.5} />
    </svg>
  );
}

interface CircleProps {
  readonly circle: MatCircle;
  readonly labelMm: number;
  readonly name: string;
  /** The label is a code, so the place in the order is drawn as well. */
  readonly numbered: boolean;
}

function Circle({ circle, labelMm, name, numbered }: CircleProps) {
  const { xMm, yMm, diameterMm, labelAt } = circle;
  const lines = wrapped(name, (diameterMm * 0.8) / (nameMm * 0.5), 3);
  const size = labelMm * 0.85;
  return (
    <g>
      <circle class="mat-circle" cx={xMm} cy={yMm} r={diameterMm / 2} />
      {numbered && (
        <text class="mat-number" x={xMm} y={yMm + diameterMm * 0.1} font-size={diameterMm * 0.28}>
          {circle.glass}
        </text>
      )}
      {lines.map((line, index) => (
        <text
          key={line}
          class="mat-name"
          x={xMm}
          y={yMm + (index - (lines.length - 1) / 2) * nameMm * 1.25 + (nameMm * capHeight) / 2}
          font-size={nameMm}
        >
          {line}
        </text>
      ))}
      <text class="mat-label" x={labelAt.xMm} y={labelAt.yMm + (size * capHeight) / 2} font-size={size}>
        {circle.label}
      </text>
    </g>
  );
}

/** A line to lay a ruler on: a printer that shrinks the page is found out before the glasses are. */
function Ruler({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g class="mat-ruler">
      <path d={`M${x} ${y}h${rulerMm}M${x} ${y - 1.2}v2.4M${x + rulerMm} ${y - 1.2}v2.4`} />
      <text class="mat-caption mat-ruler-words" x={x + rulerMm + 3} y={y + 0.9} font-size={captionMm * 0.85}>
        {paperWords.ruler}
      </text>
    </g>
  );
}
