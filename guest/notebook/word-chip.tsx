import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import { type Strength, strengths } from '../../shared/words/closing.ts';
import { closingText } from '../stage/word-sheets.ts';

interface WordChipProps {
  readonly text: string;
  readonly strength: Strength | undefined;
  readonly onTap: () => void;
}

/** One word; how strongly it is there stands in it as drops and is read out in words. */
export function WordChip({ text, strength, onTap }: WordChipProps) {
  const said = strength && (closingText.now.value?.strengths[strength] ?? strength);
  return (
    <button
      type="button"
      class="chip"
      aria-pressed={strength !== undefined}
      aria-label={said === undefined ? undefined : words.board.marked(text, said)}
      onClick={onTap}
    >
      <bdi>{text}</bdi>
      {strength !== undefined && <Drops count={strengths.indexOf(strength) + 1} />}
    </button>
  );
}

function Drops({ count }: { readonly count: number }) {
  return (
    <svg class="drops" viewBox="0 0 30 12" aria-hidden="true" focusable="false">
      {strengths.map((each, index) => (
        <path
          key={each}
          class={index < count ? 'drop-full' : 'drop-empty'}
          d={`M${5 + index * 10} 1C${3 + index * 10} 4.500 ${1.5 + index * 10} 6 ${1.5 + index * 10} 7.600A3.500 3.500 0 0 0 ${8.5 + index * 10} 7.600C${8.5 + index * 10} 6 ${7 + index * 10} 4.500 ${5 + index * 10} 1Z`}
        />
      ))}
    </svg>
  );
}
