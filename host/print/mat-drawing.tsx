import { type MatCircle, printMarginMm } from '../../core/planning/table/mat-layout.ts';
import { type MatBox, placeOnMat } from '../../core/planning/table/mat-lettering.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { cut, wrapped } from './line-wrap.ts';
import type { MatToPrint } from './mat-sheets.ts';

/** Sizes of letters in mm. */
const captionMm = 3.2;
const nameMm = 3.6;
const rulerMm = 100;
/** A letter of a wide sans serif is on average this share of its size wide. */
const letterWidth = 0.56;
/** The line, its ticks, and its words above it. */
const rulerBox = { widthMm: rulerMm + 0.4, heightMm: 6.4 };
/** A capital or digit of a serif reaches about this share of its size above the line. */
const capHeight = 0.7;

interface MatDrawingProps {
  readonly mat: MatToPrint;
  readonly caption: string;
}

/** A mat in millimetres: what is one unit here is 1 mm on paper. What is drawn stands within the margins of a printer. */
export function MatDrawing({ mat, caption }: MatDrawingProps) {
  const { circles, labelHeightMm } = mat.layout;
  const widthMm = mat.layout.widthMm - 2 * printMarginMm;
  const heightMm = mat.layout.heightMm - 2 * printMarginMm;
  const letters = cut(caption, Math.floor(widthMm / (captionMm * letterWidth)));
  const captionBox = { widthMm: [...letters].length * captionMm * letterWidth, heightMm: captionMm * 1.3 };
  const captionAt = placeOnMat(mat.layout, captionBox, 'far');
  return (
    <svg
      class="mat"
      width={`${widthMm}mm`}
      height={`${heightMm}mm`}
      viewBox={`${printMarginMm} ${printMarginMm} ${widthMm} ${heightMm}`}
      role="img"
      aria-label={caption}
    >
      <text class="mat-caption" x={captionAt.leftMm} y={captionAt.topMm + captionMm} font-size={captionMm}>
        {letters}
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
      <Ruler box={placeOnMat(mat.layout, rulerBox, 'near', [captionAt])} />
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
function Ruler({ box }: { readonly box: MatBox }) {
  const x = box.leftMm + 0.2;
  const y = box.topMm + 4.6;
  return (
    <g class="mat-ruler">
      <path d={`M${x} ${y}h${rulerMm}M${x} ${y - 1.2}v2.4M${x + rulerMm} ${y - 1.2}v2.4`} />
      <text class="mat-caption" x={x + 2} y={y - 1.4} font-size={captionMm * 0.85}>
        {paperWords.ruler}
      </text>
    </g>
  );
}
