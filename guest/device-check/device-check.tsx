import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { caution } from '../../shared/ui/notice-strokes.ts';
import { ready } from '../../shared/ui/strokes.ts';
import type { DeviceResults } from '../../shared/wire/device-check.ts';
import { tryChime, turnSound } from '../sound/chime.ts';
import { words } from './language.ts';
import { judgeLine, type LineFigures, tryLine } from './line-try.ts';
import { closeMedia, openMedia } from './media-try.ts';
import { useLoudness } from './use-loudness.ts';

interface DeviceCheckProps {
  readonly callLink: string | null;
  /** What comes below as soon as something has been tried. */
  readonly children: (tried: DeviceResults) => ComponentChildren;
}

type Stage = 'not-begun' | 'asking' | 'on' | 'off';

const mediaDevices = (): MediaDevices | undefined =>
  window.isSecureContext ? (navigator.mediaDevices as MediaDevices | undefined) : undefined;

/** Why this browser cannot take part in the call, as a sentence; null where it can. */
const whyNot = (): string | null => {
  if (!window.isSecureContext) return words.plainHttp;
  if (mediaDevices() === undefined) return words.noDevices;
  return 'RTCPeerConnection' in window ? null : words.noCall;
};

/** The four parts one below the other. Everything is let go by one tap, when the page is left, and when it is out of sight. */
export function DeviceCheck({ callLink, children }: DeviceCheckProps) {
  const [stage, setStage] = useState<Stage>('not-begun');
  const [tried, setTried] = useState<DeviceResults>({});
  const [figures, setFigures] = useState<LineFigures>();
  const [stream, setStream] = useState<MediaStream>();
  const learn = (more: DeviceResults): void => setTried((now) => ({ ...now, ...more }));
  const loudness = useLoudness(stream, (heard) => learn({ microphone: heard ? 'works' : 'silent' }));

  useEffect(() => {
    if (stream === undefined) return;
    const end = (): void => {
      closeMedia(stream);
      setStream(undefined);
      setStage('off');
    };
    const hidden = (): void => {
      if (document.visibilityState === 'hidden') end();
    };
    document.addEventListener('visibilitychange', hidden);
    return () => {
      document.removeEventListener('visibilitychange', hidden);
      closeMedia(stream);
    };
  }, [stream]);

  const tryMedia = async (devices: MediaDevices): Promise<void> => {
    const { camera, microphone, stream: opened } = await openMedia(devices);
    // Whether it hears is found out by the bar.
    learn(microphone === 'works' ? { camera } : { camera, microphone });
    setStream(opened);
    setStage(opened === undefined ? 'off' : 'on');
  };
  const begin = (): void => {
    closeMedia(stream);
    setStream(undefined);
    setTried({});
    setFigures(undefined);
    const devices = mediaDevices();
    setStage(devices === undefined ? 'off' : 'asking');
    if (devices !== undefined) void tryMedia(devices);
    void tryLine().then((line) => {
      setFigures(line);
      learn({ line: line === undefined ? 'gone' : judgeLine(line) });
    });
  };
  const hearing = loudness !== undefined && tried.microphone === undefined;
  const cannot = whyNot();
  return (
    <>
      {cannot !== null && (
        <Notice kind="caution">
          <p>{cannot}</p>
          {callLink !== null && (
            <a class="button" href={callLink} target="_blank" rel="noreferrer noopener">
              {words.callLink}
            </a>
          )}
        </Notice>
      )}
      {stage === 'not-begun' ? (
        <Button kind="primary" size="big" onPress={begin}>
          {words.begin}
        </Button>
      ) : (
        <>
          <ul class="plain-list device-parts">
            <Part name="camera" went={tried.camera} said={stage === 'asking' ? words.asking : undefined}>
              {stream !== undefined && tried.camera === 'works' && <OwnPicture stream={stream} />}
            </Part>
            <Part
              name="microphone"
              went={tried.microphone}
              said={stage === 'asking' ? words.asking : hearing ? words.speak : undefined}
            >
              {loudness !== undefined && (
                <meter class="device-level" aria-label={words.level} min={0} max={1} value={loudness} />
              )}
            </Part>
            <Part name="loudspeaker" went={tried.loudspeaker} said={words.tone}>
              <div class="row">
                <Button
                  onPress={() => {
                    turnSound(true);
                    tryChime();
                  }}
                >
                  {words.play}
                </Button>
                <Button kind="quiet" onPress={() => learn({ loudspeaker: 'works' })}>
                  {words.heard}
                </Button>
                <Button kind="quiet" onPress={() => learn({ loudspeaker: 'silent' })}>
                  {words.unheard}
                </Button>
              </div>
            </Part>
            <Part name="line" went={tried.line} said={words.measuring}>
              {figures !== undefined && <p class="soft small figures">{lineWords(figures)}</p>}
            </Part>
          </ul>
          {stream !== undefined && (
            <Button
              onPress={() => {
                closeMedia(stream);
                setStream(undefined);
                setStage('off');
              }}
            >
              {words.stop}
            </Button>
          )}
          {stage === 'off' && <Button onPress={begin}>{words.again}</Button>}
          {stage !== 'asking' && tried.line !== undefined && children(tried)}
        </>
      )}
    </>
  );
}

const lineWords = ({ roundTrip, upward }: LineFigures): string =>
  words.figures(
    Math.round(roundTrip),
    new Intl.NumberFormat(words.language, { maximumSignificantDigits: 2 }).format(upward / 1000),
  );

interface PartProps<Name extends keyof DeviceResults> {
  readonly name: Name;
  readonly went: DeviceResults[Name];
  /** While it is not known how it went. */
  readonly said: string | undefined;
  readonly children?: ComponentChildren;
}

function Part<Name extends keyof DeviceResults>({ name, went, said, children }: PartProps<Name>) {
  const sentences: Readonly<Record<string, string>> = words[name];
  const fine = went === 'works' || went === 'voice';
  return (
    <li class="device-part">
      <h2>
        {went !== undefined && <Icon of={fine ? ready : caution} />}
        {words.parts[name]}
      </h2>
      <p role="status">{went === undefined ? (said ?? words.untried) : sentences[went]}</p>
      {children}
    </li>
  );
}

function OwnPicture({ stream }: { readonly stream: MediaStream }) {
  const picture = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    if (picture.current !== null) picture.current.srcObject = stream;
  }, [stream]);
  return <video class="device-picture" ref={picture} aria-label={words.picture} autoplay playsInline muted />;
}
