import { useEffect, useLayoutEffect, useState } from 'preact/hooks';
import { consentWords } from '../../shared/language/en/consents.ts';
import { textFields } from '../../shared/notes/entry.ts';
import { type Consents, type PagePart, type PageSharing, sharings } from '../../shared/wire/sharing.ts';
import type { PourId, SeatedViews } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';
import { boardItems } from './board-items.ts';
import { words } from './language.ts';
import { PartChips } from './part-chips.tsx';
import { ShareChoice } from './share-choice.tsx';

/** It comes by itself: a tap within so many ms was meant for what stood there before. */
const settleMs = 450;

/** Asked once when a talk opens, in the talk before anything else on the screen: what of these glasses goes to the table [Q2]. */
export function TableQuestion(props: SeatedViews) {
  const { asked, lock } = useRoom();
  // Whoever types is asked when they have put the pen down [F5].
  return asked.value.length === 0 || lock.writing.value ? null : <Asked {...props} pours={asked.value} />;
}

function Asked({ stage, own, pours }: SeatedViews & { readonly pours: readonly PourId[] }) {
  const { follower, consent, status } = useRoom();
  const [finer, setFiner] = useState(false);
  const [settled, setSettled] = useState(false);
  const [only, setOnly] = useState<readonly PagePart[]>([]);
  const all = boardItems(stage, own.trials);
  const items = all.filter(({ id }) => pours.includes(id));
  const given = follower.consents.value;
  const question = consentWords.question(pours.length);
  useLayoutEffect(() => {
    window.scrollTo(0, 0);
    status.say(question, { unseen: true });
  }, []);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(true), settleMs);
    return () => {
      clearTimeout(timer);
      focusOnPage();
    };
  }, []);
  const counts = pours.some((pour) => isCounted(given.get(pour)));
  return (
    <section class="table-question" aria-label={question}>
      <h2>{question}</h2>
      <p class="soft small">{consentWords.lead}</p>
      {offers(lastPage(all, given), only).map(({ page, label, hint }) => (
        <button
          type="button"
          key={label}
          class="button table-offer"
          disabled={!settled}
          onClick={() => void consent(pours, { page })}
        >
          <span>{label}</span>
          <span class="soft small">{hint}</span>
        </button>
      ))}
      {finer ? (
        <>
          <PartChips legend={consentWords.only} chosen={only} verdict={counts} onChange={setOnly} />
          {items.length > 1 &&
            items.map((item) => (
              <ShareChoice
                key={item.id}
                item={item}
                drink={item.drink ?? stage.drink}
                parts={only.length > 0 ? only : undefined}
              />
            ))}
        </>
      ) : (
        <button type="button" class="button button-quiet" onClick={() => setFiner(true)}>
          {consentWords.finer}
        </button>
      )}
    </section>
  );
}

interface Offer {
  readonly page: PageSharing;
  readonly label: string;
  readonly hint: string;
}

/** What one chose last time comes first, never by itself. */
function offers(last: PageSharing | undefined, only: readonly PagePart[]): Offer[] {
  const parts = only.length > 0 ? only : textFields;
  const usual = sharings.map((sharing): Offer => {
    const page = { sharing, parts: sharing === 'private' ? [] : parts };
    return { page, label: words.share.choices[sharing], hint: consentWords.hints[sharing] };
  });
  if (last === undefined) return usual;
  const first = usual.find(({ page }) => page.sharing === last.sharing);
  if (first === undefined) return usual;
  const hint = `${first.hint.replace(/\.$/, '')} (${consentWords.lastTime}).`;
  if (only.length > 0 || last.parts.length === 0 || textFields.every((part) => last.parts.includes(part))) {
    return [{ ...first, hint }, ...usual.filter((each) => each !== first)];
  }
  const names = last.parts.map((part) => (part === 'verdict' ? consentWords.verdict : words.fields[part]));
  return [{ page: last, label: `${first.label}: ${names.join(', ')}`, hint }, ...usual];
}

/** The page of the last glass, in the order of tasting, that they answered for. */
const lastPage = (
  items: readonly { readonly id: PourId; readonly drink: unknown }[],
  given: ReadonlyMap<PourId, Consents>,
): PageSharing | undefined =>
  items.flatMap(({ id, drink }) => (drink === null ? [] : (given.get(id)?.page ?? []))).at(-1);

const isCounted = (consents: Consents | undefined): boolean =>
  consents?.order === 'counts' || consents?.liking === 'counts';

/** The button that was pressed is gone with the question. */
function focusOnPage(): void {
  if (document.activeElement === document.body) document.querySelector('h1')?.focus({ preventScroll: true });
}
