import type { PourId } from '../../core/ids.ts';
import type { PourFigure, RoundResult } from '../../core/panel/round-result.ts';
import { resultWords as words } from '../language/en/result.ts';
import { endOf, rowInWords, saidOf, type ToldPart } from './result-texts.ts';

interface RoomResultProps {
  readonly part: RoundResult;
  /** As this screen calls a glass. */
  readonly nameOf: (pour: PourId) => string;
  /** The tablet has the sentences among what is to be said aloud. */
  readonly unsaid?: boolean;
}

/** What the room made of its glasses, the same picture on every screen: places and their spread, and how sure that is. */
export function RoomResult({ part, nameOf, unsaid = false }: RoomResultProps) {
  return (
    <section class="result">
      <h2 class="result-title">{words.titles[part.of]}</h2>
      {!unsaid && <p class="result-said">{saidOf(part, nameOf)}</p>}
      {part.outcome === 'told' && (
        <>
          <p class="result-counted">{words.counted[part.of](part.counted, part.given)}</p>
          <ol class="stack-close result-rows" style={{ '--rows': part.pours.length }}>
            {part.pours.map((figure) => (
              <Row key={figure.pour} part={part} figure={figure} name={nameOf(figure.pour)} />
            ))}
          </ol>
          <p class="result-axis">{words.axis[part.of](endOf(part))}</p>
        </>
      )}
    </section>
  );
}

interface RowProps {
  readonly part: ToldPart;
  readonly figure: PourFigure;
  readonly name: string;
}

function Row({ part, figure: { mean, spread }, name }: RowProps) {
  const end = endOf(part);
  return (
    <li class="result-row">
      <span class="visually-hidden">{rowInWords(part, { mean, spread }, name)}</span>
      <bdi class="result-name" aria-hidden="true">
        {name}
      </bdi>
      <span class="result-mean figures" aria-hidden="true">
        {mean === null ? words.tooFewHere : words.mean(mean)}
      </span>
      <Spread end={end} mean={mean} spread={spread} />
    </li>
  );
}

interface SpreadProps extends Pick<PourFigure, 'mean' | 'spread'> {
  readonly end: number;
}

/** A dot where guests stand, its area as many as they are, and a line at their mean. */
function Spread({ mean, spread, end }: SpreadProps) {
  const most = Math.max(1, ...spread.map(({ guests }) => guests));
  const x = (at: number): string => `${4 + (92 * (at - 1)) / (end - 1)}%`;
  return (
    <svg class="result-spread" aria-hidden="true">
      <line class="result-line" x1="4%" x2="96%" y1="50%" y2="50%" />
      {Array.from({ length: end }, (_, index) => (
        <line key={x(index + 1)} class="result-line" x1={x(index + 1)} x2={x(index + 1)} y1="35%" y2="65%" />
      ))}
      {spread.map(({ at, guests }) => (
        <circle key={at} class="result-dot" cx={x(at)} cy="50%" r={3 + 8 * Math.sqrt(guests / most)} />
      ))}
      {mean !== null && <line class="result-mark" x1={x(mean)} x2={x(mean)} y1="4%" y2="96%" />}
    </svg>
  );
}
