import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import { resultWords } from '../../shared/language/en/result.ts';
import { rowInWords, saidOf } from '../../shared/talk/result-texts.ts';
import { Finding } from './finding.tsx';
import type { Names } from './names.ts';

interface ToldFindingProps {
  readonly part: EveningRecap['told'][number];
  readonly names: Names;
}

/** What the room was told of its glasses, as it stood then. */
export function ToldFinding({ part, names }: ToldFindingProps) {
  return (
    <Finding
      title={resultWords.titles[part.of]}
      said={saidOf(part, names.pour)}
      reckoned={[resultWords.counted[part.of](part.counted, part.given), resultWords.asTold]}
    >
      <ol class="marks">
        {part.pours.map((figure) => (
          <li key={figure.pour} dir="auto">
            {rowInWords(part, figure, names.pour(figure.pour))}
          </li>
        ))}
      </ol>
    </Finding>
  );
}
