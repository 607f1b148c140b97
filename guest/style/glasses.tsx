import { useSignal } from '@preact/signals';
import { Button } from '../../shared/ui/button.tsx';
import { DrainingGlass } from '../../shared/ui/draining-glass.tsx';
import { type ArcGlass, GlassArc } from '../../shared/ui/glass-arc.tsx';
import { mostGlasses } from '../../shared/ui/glass-places.ts';
import { useTick } from '../../shared/ui/use-tick.ts';
import { BothThemes } from './both-themes.tsx';
import { words } from './sample-words.ts';

const row = (count: number, current: number): ArcGlass[] =>
  Array.from({ length: count }, (_, index) =>
    index === current ? 'current' : index < current ? 'done' : 'waiting',
  );

/** Frozen times, so that two pictures of this page are the same picture. */
const minutes = (startsAt: number, endsAt: number) =>
  ({ status: 'running', startsAt: startsAt * 60_000, endsAt: endsAt * 60_000 }) as const;

export function Glasses({ mirrored }: { readonly mirrored: boolean }) {
  return (
    <>
      <BothThemes
        title="The arc"
        show={() => (
          <>
            <Arc count={8} current={2} mirrored={mirrored} />
            <Arc count={8} current={2} mirrored={!mirrored} />
            <Arc count={mostGlasses} current={10} mirrored={mirrored} />
            <Arc count={3} current={0} mirrored={mirrored} />
          </>
        )}
      />
      <BothThemes
        title="Time"
        show={() => (
          <div class="style-times">
            <DrainingGlass time={minutes(0, 2)} now={0} label={words.time} words={words.phases} />
            <DrainingGlass time={minutes(0, 2)} now={78_000} label={words.time} words={words.phases} />
            <DrainingGlass
              time={{ status: 'held', remaining: 55_000, total: 120_000 }}
              now={0}
              label={words.time}
              words={words.phases}
            />
            <DrainingGlass time={minutes(0, 2)} now={132_000} label={words.time} words={words.phases} />
            <RunningTime />
          </div>
        )}
      />
    </>
  );
}

function Arc(props: { readonly count: number; readonly current: number; readonly mirrored: boolean }) {
  const text = `Glass ${props.current + 1} of ${props.count}`;
  return (
    <GlassArc
      glasses={row(props.count, props.current)}
      mirrored={props.mirrored}
      label={text}
      caption={text}
    />
  );
}

const wall = (): number => Date.now();

/** Twenty seconds, when asked for: a page that never stops cannot be photographed. */
function RunningTime() {
  const endsAt = useSignal<number | undefined>(undefined);
  const running = endsAt.value !== undefined;
  const end = endsAt.value ?? 20_000;
  const now = useTick(wall, { running, anchor: end });
  return (
    <div class="style-running">
      <DrainingGlass
        time={{ status: 'running', startsAt: end - 20_000, endsAt: end }}
        now={running ? now : 0}
        label={words.time}
        words={words.phases}
      />
      <Button
        onPress={() => {
          endsAt.value = wall() + 20_000;
        }}
      >
        Pour again
      </Button>
    </div>
  );
}
