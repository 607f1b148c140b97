import { useEffect, useState } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Keepsake } from '../../shared/wire/http.ts';
import { words } from '../language.ts';
import { PageTitle } from '../page/page-title.tsx';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { useRoom } from '../room/room.ts';
import { KeepsakeDownloads } from './keepsake-downloads.tsx';
import { KeepsakeSheet } from './keepsake-sheet.tsx';
import { homeWords } from './language.ts';
import { PrivateLink } from './private-link.tsx';
import { useVocabularies } from './use-vocabularies.ts';

type LoadingLine =
  | { readonly status: 'fetching' }
  | { readonly status: 'refused'; readonly code: string }
  | { readonly status: 'here'; readonly keepsake: Keepsake };

interface KeepsakePageProps {
  /** The notes are deleted and the seat is gone. */
  readonly onGone: (said: string) => void;
  readonly onEvenings: () => void;
}

/** What a guest takes home: their own notes with the names of the pours. */
export function KeepsakePage({ onGone, onEvenings }: KeepsakePageProps) {
  const { follower, page, seat } = useRoom();
  const [fetching, setFetching] = useState<LoadingLine>({ status: 'fetching' });
  const [asked, setAsked] = useState(0);
  const { tasting, key } = seat.value;
  // Fetched anew when the last words have arrived at the server, or names have become known.
  const unsaved = [...follower.notebook.entries.value.values()].some((each) => each.state.status !== 'saved');
  const stage = follower.stage.value?.version;
  useEffect(() => {
    let gone = false;
    void requestServer<Keepsake>(`/api/keepsake/${encodeURIComponent(tasting)}`, { key }).then((answer) => {
      if (gone) return;
      setFetching(
        answer.ok ? { status: 'here', keepsake: answer.body } : { status: 'refused', code: answer.code },
      );
    });
    return () => {
      gone = true;
    };
  }, [tasting, key, asked, unsaved, stage]);

  const keepsake = fetching.status === 'here' ? fetching.keepsake : undefined;
  // Its own drink too: an evening may end before its first glass.
  const vocabularyOf = useVocabularies(
    keepsake ? [keepsake.drink, ...keepsake.pours.map(({ drink }) => drink)] : [],
  );

  return (
    <main class="page keepsake">
      <div class="screen-only stack">
        <PageTitle>{homeWords.title}</PageTitle>
        <p class="lead">
          {homeWords.thanks(follower.seat.value?.name ?? '')} {homeWords.lead}
        </p>
        <Notice kind="water">{words.keepsake.care}</Notice>
        {unsaved && <Notice kind="info">{homeWords.unsaved}</Notice>}
        {keepsake && vocabularyOf && <KeepsakeDownloads keepsake={keepsake} vocabularyOf={vocabularyOf} />}
      </div>
      {(fetching.status === 'fetching' || (keepsake && !vocabularyOf)) && (
        <p class="soft">{homeWords.fetching}</p>
      )}
      {fetching.status === 'refused' && (
        <>
          <Notice kind="info">{refusalSentence(fetching.code)}</Notice>
          <Button onPress={() => setAsked(asked + 1)}>{homeWords.again}</Button>
        </>
      )}
      {keepsake && vocabularyOf && <KeepsakeSheet keepsake={keepsake} vocabularyOf={vocabularyOf} />}
      <div class="screen-only stack">
        <PrivateLink onGone={onGone} />
      </div>
      <div class="screen-only thumb-bar">
        <Button
          kind="quiet"
          onPress={() => {
            page.value = { at: 'notes', pour: null };
          }}
        >
          {words.notes.open}
        </Button>
        <Button kind="quiet" onPress={onEvenings}>
          {homeWords.evenings.open}
        </Button>
        {follower.stage.value?.status === 'under-way' && follower.seat.value?.presence === 'seated' && (
          <Button
            onPress={() => {
              page.value = { at: 'room' };
            }}
          >
            {words.notes.back}
          </Button>
        )}
      </div>
    </main>
  );
}
