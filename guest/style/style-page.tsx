import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Choice, optionsOf } from '../../shared/ui/choice.tsx';
import { createStatus } from '../../shared/ui/status.ts';
import { StatusBar } from '../../shared/ui/status-bar.tsx';
import { applyTheme, readTheme, saveTheme, type ThemeChoice } from '../../shared/ui/theme.ts';
import { Controls } from './controls.tsx';
import { Glasses } from './glasses.tsx';
import { Icons } from './icons.tsx';
import { Palette } from './palette.tsx';
import { Panels } from './panels.tsx';
import { words } from './sample-words.ts';
import { Sheets } from './sheets.tsx';
import { TypeScale } from './type-scale.tsx';

type Hand = 'right' | 'left';
type Device = 'guest' | 'host';
type Script = 'ltr' | 'rtl';

/** Every part in both themes, side by side where there is room; the hand, the targets and the script can be turned. */
export function StylePage() {
  const theme = useSignal<ThemeChoice>(readTheme());
  const hand = useSignal<Hand>('right');
  const device = useSignal<Device>('guest');
  const script = useSignal<Script>('ltr');
  const status = useMemo(createStatus, []);
  useEffect(() => {
    document.documentElement.dir = script.value;
  }, [script.value]);
  const chooseTheme = (choice: ThemeChoice): void => {
    theme.value = choice;
    applyTheme(choice, document.documentElement);
    saveTheme(choice);
  };
  return (
    <main class="style-page" data-hand={hand.value} data-app={device.value}>
      <StatusBar status={status} closeLabel={words.close} />
      <header class="style-head">
        <h1>{words.title}</h1>
        <p class="lead soft">{words.lead}</p>
        <div class="style-turns">
          <Choice
            legend={words.themeLegend}
            across
            value={theme.value}
            onChoose={chooseTheme}
            options={[
              { value: 'auto', label: words.auto },
              { value: 'linen', label: words.linen, hint: words.linenHint },
              { value: 'cellar', label: words.cellar, hint: words.cellarHint },
            ]}
          />
          <Choice
            legend={words.handLegend}
            across
            value={hand.value}
            onChoose={setterOf(hand)}
            options={optionsOf(['left', 'right'], words)}
          />
          <Choice
            legend={words.deviceLegend}
            across
            value={device.value}
            onChoose={setterOf(device)}
            options={optionsOf(['guest', 'host'], words)}
          />
          <Choice
            legend={words.scriptLegend}
            across
            value={script.value}
            onChoose={setterOf(script)}
            options={optionsOf(['ltr', 'rtl'], words)}
          />
        </div>
      </header>
      <TypeScale />
      <Palette />
      <Glasses mirrored={hand.value === 'left'} />
      <Controls status={status} />
      <Panels />
      <Icons />
      <Sheets />
    </main>
  );
}
