import { useState } from 'preact/hooks';
import { choosingWords } from '../language/en/choosing.ts';
import { languagesOfPage, nameOfLanguage, rememberLanguage } from './languages.ts';

interface LanguageChoiceProps {
  /** Resolves when all that was written here is safe; the page is loaded anew afterwards. */
  readonly settle?: (() => Promise<unknown>) | undefined;
}

/**
 * The other languages of this page, each named in itself. The page is loaded anew where it stands: what it keeps on the
 * device or in the tab it has again. Nothing at all where there is one language only.
 */
export function LanguageChoice({ settle }: LanguageChoiceProps) {
  const [busy, setBusy] = useState(false);
  const languages = languagesOfPage(document);
  if (languages.length < 2) return null;
  const now = document.documentElement.lang;
  const choose = async (event: MouseEvent, language: string): Promise<void> => {
    // Without cookies the address has to say it; the link does.
    if (!rememberLanguage(language, document)) return;
    event.preventDefault();
    if (busy) return;
    setBusy(true);
    await settle?.();
    window.location.reload();
  };
  return (
    <nav class="language-choice" aria-label={choosingWords.choose} aria-busy={busy ? true : undefined}>
      {languages.map((language) =>
        language === now ? (
          <span key={language} lang={language} aria-current="true">
            {nameOfLanguage(language)}
          </span>
        ) : (
          <a
            key={language}
            lang={language}
            hreflang={language}
            href={`?language=${language}`}
            onClick={(event) => void choose(event, language)}
          >
            {nameOfLanguage(language)}
          </a>
        ),
      )}
    </nav>
  );
}
