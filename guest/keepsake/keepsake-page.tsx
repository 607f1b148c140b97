import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Keepsake } from '../../shared/wire/http.ts';
import { words } from '../language.ts';
import { askServer } from '../seat/ask-server.ts';
import { PageTitle } from '../seat/page-title.tsx';
import { refusalSentence } from '../seat/refusal-sentence.ts';
import { useRoom } from '../seat/room.ts';
import { KeepsakeSheet } from './keepsake-sheet.tsx';
import { TakeAway } from './take-away.tsx';

type Fetching =
  | { readonly status: 'fetching' }
  | { readonly status: 'refused'; readonly code: string }
  | { readonly status: 'here'; readonly keepsake: Keepsake };

/** What a guest takes home: their own notes with the names of the pours. */
export function KeepsakePage() {
  const { follower, page, seat } = useRoom();
  const [fetching, setFetching] = useState<Fetching>({ status: 'fetching' });
  const [asked, setAsked] = useState(0);
  const { tasting, key } = seat.value;
  // Fetched anew when the last words have arrived at the server, or names have become known.
  const unsaved = [...follower.notebook.entries.value.values()].some((each) => each.state.status !== 'saved');
  const stage = follower.stage.value?.version;
  useEffect(() => {
    let gone = false;
    void askServer<Keepsake>(`/api/keepsake/${encodeURIComponent(tasting)}`, { key }).then((answer) => {
      if (gone) return;
      setFetching(
        answer.ok ? { status: 'here', keepsake: answer.body } : { status: 'refused', code: answer.code },
      );
    });
    return () => {
      gone = true;
    };
  }, [tasting, key, asked, unsaved, stage]);

  return (
    <main class="page keepsake">
      <div class="screen-only stack">
        <PageTitle>{words.keepsake.title}</PageTitle>
        <p class="lead">
          {words.keepsake.thanks(follower.seat.value?.name ?? '')} {words.keepsake.lead}
        </p>
        <Notice kind="water">{words.keepsake.care}</Notice>
        {unsaved && <Notice kind="info">{words.keepsake.unsaved}</Notice>}
        {fetching.status === 'here' && <TakeAway keepsake={fetching.keepsake} />}
      </div>
      {fetching.status === 'fetching' && <p class="soft">{words.keepsake.fetching}</p>}
      {fetching.status === 'refused' && (
        <>
          <Notice kind="info">{refusalSentence(fetching.code)}</Notice>
          <Button onPress={() => setAsked(asked + 1)}>{words.keepsake.again}</Button>
        </>
      )}
      {fetching.status === 'here' && <KeepsakeSheet keepsake={fetching.keepsake} />}
      <div class="screen-only thumb-bar">
        <Button
          kind="quiet"
          onPress={() => {
            page.value = { at: 'notes', pour: null };
          }}
        >
          {words.notes.open}
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
