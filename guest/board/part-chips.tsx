import { consentWords } from '../../shared/language/en/consents.ts';
import { type PagePart, pageParts } from '../../shared/wire/sharing.ts';
import { words } from './language.ts';

interface PartChipsProps {
  readonly legend: string;
  readonly chosen: readonly PagePart[];
  /** Whether a liking or a ranking counts, so that it can have a name too. */
  readonly verdict: boolean;
  readonly onChange: (parts: readonly PagePart[]) => void;
}

/** Which senses of a page go to the table. */
export function PartChips({ legend, chosen, verdict, onChange }: PartChipsProps) {
  return (
    <fieldset class="row">
      <legend class="soft small">{legend}</legend>
      {pageParts
        .filter((part) => verdict || part !== 'verdict')
        .map((part) => (
          <button
            type="button"
            key={part}
            class="chip"
            aria-pressed={chosen.includes(part)}
            onClick={() => onChange(pageParts.filter((each) => chosen.includes(each) !== (each === part)))}
          >
            {part === 'verdict' ? consentWords.verdict : words.fields[part]}
          </button>
        ))}
    </fieldset>
  );
}
