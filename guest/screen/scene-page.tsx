import { useEffect, useMemo, useRef } from 'preact/hooks';
import { followAsScreen, type ScreenFollower } from '../../shared/follower/screen-follower.ts';
import { watchForWake } from '../../shared/follower/wake-watch.ts';
import { lazyComponent, lazyPart } from '../../shared/page/lazy-part.ts';
import type { Admission } from '../../shared/page/screen-preview.ts';
import { createStatus, type Status } from '../../shared/ui/status.ts';
import { StatusBar } from '../../shared/ui/status-bar.tsx';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { isCamera } from './camera-choice.ts';
import { guestWords, words } from './language.ts';
import { PagesScene } from './pages-scene.tsx';
import { sceneOf } from './scene.ts';
import { FarewellScene } from './scenes/farewell-scene.tsx';
import { GatheringScene } from './scenes/gathering-scene.tsx';
import { RestScene } from './scenes/rest-scene.tsx';
import { ResultScene } from './scenes/result-scene.tsx';
import { StepScene } from './scenes/step-scene.tsx';
import { Rules, TextScene } from './scenes/text-scene.tsx';
import { spokenCue } from './spoken-cue.ts';

interface ScenePageProps {
  readonly admission: Admission;
  readonly onDark: (why: string) => void;
}

/** The room, as everybody sees it; it follows by itself and takes nothing from anybody. */
export function ScenePage({ admission, onDark }: ScenePageProps) {
  const { tasting, key } = admission;
  const follower = useMemo(() => followAsScreen({ tasting, key }), [tasting, key]);
  const status = useMemo(createStatus, []);
  useEffect(() => {
    const stop = watchForWake(follower.wake);
    return () => {
      stop();
      follower.close();
    };
  }, [follower]);
  const link = follower.link.value;
  useEffect(() => {
    if (link.status === 'dismissed') {
      onDark(link.why === 'tasting-deleted' ? words.link.deleted : words.refused.dark);
    }
    if (link.status === 'refused') {
      onDark(link.code === 'wrong-key' ? words.refused.dark : refusalSentence(link.code));
    }
  }, [link]);
  const lost = link.status === 'lost' || link.status === 'connecting';
  return (
    <>
      <StatusBar status={status} closeLabel={guestWords.close} />
      {lost && <p class="screen-link">{link.status === 'lost' ? words.link.lost : words.link.connecting}</p>}
      {isCamera() ? (
        <CameraPage follower={follower} />
      ) : (
        <>
          <Scenes admission={admission} follower={follower} status={status} />
          {window.parent === window && <Television follower={follower} />}
        </>
      )}
    </>
  );
}

const callPart = lazyPart(() => import('./call/call-part.ts'));
const Television = lazyComponent(callPart, ({ callPages }) => callPages.Television);
const CameraPage = lazyComponent(callPart, ({ callPages }) => callPages.CameraPage);

interface ScenesProps {
  readonly admission: Admission;
  readonly follower: ScreenFollower;
  readonly status: Status;
}

function Scenes({ admission, follower, status }: ScenesProps) {
  const stage = follower.stage.value;
  useAnnounced(follower, status);
  if (stage === null) {
    return (
      <main class="screen-room">
        <GatheringScene admission={admission} stage={null} />
      </main>
    );
  }
  const scene = sceneOf(stage, follower.board.value, follower.shows.value);
  const dark = scene.is === 'dark' || (scene.is === 'step' && scene.dark);
  return (
    <main class={`screen-room screen-${scene.is}`} data-theme={dark ? 'cellar' : undefined}>
      {(() => {
        switch (scene.is) {
          case 'gathering':
            return <GatheringScene admission={admission} stage={scene.stage} />;
          case 'rules':
            return (
              <TextScene stage={scene.stage}>
                <Rules />
              </TextScene>
            );
          case 'step':
            return <StepScene stage={scene.stage} now={follower.clock.now} />;
          case 'rest':
            return <RestScene stage={scene.stage} now={follower.clock.now} />;
          case 'text':
            return <TextScene stage={scene.stage} />;
          case 'pages':
            return (
              <PagesScene
                stage={scene.stage}
                board={scene.board}
                chosen={scene.chosen}
                guesses={follower.guesses.value}
                now={follower.clock.now}
              />
            );
          case 'result':
            return <ResultScene stage={scene.stage} told={scene.told} />;
          case 'dark':
            return <h1 class="visually-hidden">{words.madeDark}</h1>;
          case 'farewell':
            return <FarewellScene stage={scene.stage} />;
          default:
            return scene satisfies never;
        }
      })()}
    </main>
  );
}

/** The polite region says each new cue once, for whoever follows this screen by ear. */
function useAnnounced(follower: ScreenFollower, status: Status): void {
  const stage = follower.stage.value;
  const said = stage === null ? '' : spokenCue(stage);
  const before = useRef('');
  useEffect(() => {
    if (said !== '' && said !== before.current) status.say(said, { unseen: true });
    before.current = said;
  }, [said, status]);
}
