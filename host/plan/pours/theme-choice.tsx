import type { ThemeCheck } from '../../../core/planning/theme/theme.ts';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { Fold } from '../fields/fold.tsx';
import { SelectField } from '../fields/select-field.tsx';
import type { PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';
import {
  heldOptions,
  holding,
  inEachFlight,
  type Theme,
  type Turn,
  themeOfKind,
  turned,
  turnsOf,
} from './theme-turns.ts';

const kinds = ['free', 'horizontal', 'vertical', 'versus'] as const;

interface ThemeChoiceProps {
  readonly editor: PlanEditor;
  readonly checks: readonly ThemeCheck[];
}

export function ThemeChoice({ editor, checks }: ThemeChoiceProps) {
  const { theme } = editor.draft.plan.value;
  const said = words.pours;
  const set = (change: (theme: Theme) => Theme) =>
    editor.edit((now) => ({ ...now, theme: change(now.theme) }));
  const turns: readonly Turn[] = turnsOf[theme.kind];
  return (
    <Fold title={said.theme} summary={said.themes[theme.kind]}>
      <Choice
        legend={said.theme}
        options={optionsOf(kinds, said.themes, said.themeHints)}
        value={theme.kind}
        onChoose={(kind) => set((now) => themeOfKind(kind, now))}
      />
      {theme.kind !== 'free' && (
        <Choice
          legend={said.themeBy}
          options={optionsOf(turns, said.bys)}
          value={theme.by}
          onChoose={(by) => set((now) => turned(now, by))}
          across
        />
      )}
      <MoreOfTheme theme={theme} set={set} />
      {(theme.kind === 'horizontal' || theme.kind === 'vertical') && (
        <Switch
          label={words.themeMore.each}
          on={theme.each !== undefined}
          onTurn={(on) => set((now) => inEachFlight(now, on))}
        />
      )}
      {theme.kind !== 'free' && <Checks editor={editor} checks={checks} />}
    </Fold>
  );
}

interface MoreOfThemeProps {
  readonly theme: Theme;
  readonly set: (change: (theme: Theme) => Theme) => void;
}

/** What a horizontal holds the same, and how the sides of a comparison meet. */
function MoreOfTheme({ theme, set }: MoreOfThemeProps) {
  const said = words.themeMore;
  switch (theme.kind) {
    case 'free':
    case 'vertical':
      return null;
    case 'horizontal': {
      const options = heldOptions(theme.by);
      return (
        <SelectField
          label={said.held}
          value={theme.held ?? ''}
          options={[
            { value: '', label: said.nothingHeld },
            ...options.map((value) => ({ value, label: words.pours.bys[value] })),
          ]}
          onChoose={(value) =>
            set((now) =>
              now.kind === 'horizontal'
                ? holding(
                    now,
                    options.find((each) => each === value),
                  )
                : now,
            )
          }
        />
      );
    }
    case 'versus':
      return (
        <>
          <Choice
            legend={said.flights}
            options={optionsOf(['side-by-side', 'matched'], said.flightsOf, said.flightHints)}
            value={theme.flights ?? 'side-by-side'}
            onChoose={(flights) => set((now) => (now.kind === 'versus' ? { ...now, flights } : now))}
            across
          />
          <p class="soft small">{said.cut}</p>
        </>
      );
    default:
      return theme satisfies never;
  }
}

function Checks({ editor, checks }: ThemeChoiceProps) {
  const { pours } = editor.draft.plan.value;
  const said = words.pours;
  const name = (id: string) => pours.find((pour) => pour.id === id)?.name ?? id;
  if (checks.length === 0) return <p class="soft">{said.themeHolds}</p>;
  return (
    <div class="plan-group">
      <h3>{said.themeChecks}</h3>
      <ul class="hints">
        {checks.map((check) => {
          const fault = words.themeSentence(check, name);
          const sentence =
            check.flight === undefined ? fault : words.themeMore.inFlight(check.flight + 1, fault);
          return <li key={sentence}>{sentence}</li>;
        })}
      </ul>
    </div>
  );
}
