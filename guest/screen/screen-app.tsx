import { useEffect, useMemo, useState } from 'preact/hooks';
import { after } from '../../shared/follower/timer.ts';
import { type Admission, previewOf } from '../../shared/page/screen-preview.ts';
import { requestServer } from '../../shared/page/server-request.ts';
import { tidyCode } from '../../shared/seats/seat-link.ts';
import type { ScreenAnswer } from '../../shared/wire/http.ts';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { CodePage } from './code-page.tsx';
import { words } from './language.ts';
import { createPairing } from './pairing.ts';
import { RefusedPage } from './refused-page.tsx';
import { ScenePage } from './scene-page.tsx';
import { forgetKey, keyFor } from './screen-key.ts';
import { WaitingPage } from './waiting-page.tsx';

type Place =
  | { readonly at: 'door'; readonly problem: string | null }
  /** The small picture on the host's tablet: it asks for nothing and pairs with nobody. */
  | { readonly at: 'preview'; readonly admission: Admission }
  /** `turn` counts the asks of this code, for each has a key of its own. */
  | { readonly at: 'code'; readonly code: string; readonly turn: number }
  | { readonly at: 'dark'; readonly code: string; readonly why: string };

function begin(): Place {
  const admission = previewOf(window.location.hash);
  if (admission !== null) {
    history.replaceState(null, '', window.location.pathname);
    // Only our own pages may frame this one. By itself, a link could bring a stranger's code and address to our name.
    if (window.parent !== window) return { at: 'preview', admission };
  }
  const code = tidyCode(decodeURIComponent(window.location.pathname.split('/')[2] ?? ''));
  return code === '' ? { at: 'door', problem: null } : { at: 'code', code, turn: 0 };
}

/** From the code to the room: it asks by itself, shows its number, and then whatever the room does. */
export function ScreenApp() {
  const [place, setPlace] = useState(begin);
  const toDoor = (problem: string | null): void => {
    history.replaceState(null, '', `/screen${window.location.search}`);
    setPlace({ at: 'door', problem });
  };
  const toCode = (code: string): void => {
    history.replaceState(null, '', `/screen/${encodeURIComponent(code)}${window.location.search}`);
    setPlace({ at: 'code', code, turn: performance.now() });
  };
  switch (place.at) {
    case 'door':
      return <CodePage problem={place.problem} onCode={toCode} />;
    case 'preview':
      return <ScenePage admission={place.admission} onDark={(why) => toDoor(why)} />;
    case 'code':
      return (
        <Paired
          key={place.turn}
          code={place.code}
          onWrongCode={(problem) => toDoor(problem)}
          onDark={(why) => {
            forgetKey();
            setPlace({ at: 'dark', code: place.code, why });
          }}
        />
      );
    case 'dark':
      return <RefusedPage why={place.why} onAgain={() => toCode(place.code)} onOther={() => toDoor(null)} />;
    default:
      return place satisfies never;
  }
}

interface PairedProps {
  readonly code: string;
  readonly onWrongCode: (problem: string) => void;
  readonly onDark: (why: string) => void;
}

function Paired({ code, onWrongCode, onDark }: PairedProps) {
  const pairing = useMemo(
    () =>
      createPairing({
        code,
        key: keyFor(code),
        ask: (body) => requestServer<ScreenAnswer>('/api/screens', { body }),
        after,
      }),
    [code],
  );
  useEffect(() => pairing.close, [pairing]);
  const state = pairing.state.value;
  useEffect(() => {
    if (state.at !== 'refused') return;
    if (state.code === 'wrong-key') onDark(words.refused.notOurs);
    else onWrongCode(refusalSentence(state.code));
  }, [state]);
  switch (state.at) {
    case 'asking':
      return (
        <WaitingPage number={null} trouble={state.trouble === null ? null : refusalSentence(state.trouble)} />
      );
    case 'waiting':
      return (
        <WaitingPage
          number={state.number}
          trouble={state.trouble === null ? null : refusalSentence(state.trouble)}
        />
      );
    case 'admitted':
      return <ScenePage admission={state.admission} onDark={onDark} />;
    case 'refused':
      return null;
    default:
      return state satisfies never;
  }
}
