import type { ThemeCheck } from '../../../core/planning/theme.ts';
import type { Plan } from '../../../core/tasting.ts';
import { Choice } from '../../../shared/ui/choice.tsx';
import type { Desk } from '../desk.ts';
import { Fold } from '../fields/fold.tsx';
import { words } from '../words.ts';

type Theme = Plan['theme'];
type By = keyof typeof words.pours.bys;

const kinds = ['free', 'horizontal', 'vertical', 'versus'] as const;

const usual: Readonly<Record<Theme['kind'], Theme>> = {
  free: { kind: 'free' },
  horizontal: { kind: 'horizontal', by: 'producer' },
  vertical: { kind: 'vertical', by: 'vintage' },
  versus: { kind: 'versus', by: 'region' },
};

/** Every way in which a theme of this kind may turn. */
function turnsOf(theme: Theme): readonly Theme[] {
  switch (theme.kind) {
    case 'free':
      return [];
    case 'horizontal':
      return (['producer', 'region', 'country', 'style'] as const).map((by) => ({ kind: 'horizontal', by }));
    case 'vertical':
      return (['vintage', 'age'] as const).map((by) => ({ kind: 'vertical', by }));
    case 'versus':
      return (['region', 'strength', 'price'] as const).map((by) => ({ kind: 'versus', by }));
    default:
      return theme satisfies never;
  }
}

const byOf = (theme: Theme): By | undefined => (theme.kind === 'free' ? undefined : theme.by);

interface ThemeChoiceProps {
  readonly desk: Desk;
  readonly checks: readonly ThemeCheck[];
}

export function ThemeChoice({ desk, checks }: ThemeChoiceProps) {
  const { theme, pours } = desk.draft.plan.value;
  const said = words.pours;
  const turns = turnsOf(theme);
  const name = (id: string) => pours.find((pour) => pour.id === id)?.name ?? id;
  const set = (wanted: Theme | undefined) => wanted && desk.edit((now) => ({ ...now, theme: wanted }));
  return (
    <Fold title={said.theme} summary={said.themes[theme.kind]}>
      <Choice
        legend={said.theme}
        options={kinds.map((value) => ({ value, label: said.themes[value], hint: said.themeHints[value] }))}
        value={theme.kind}
        onChoose={(kind) => set(usual[kind])}
      />
      {turns.length > 0 && (
        <Choice
          legend={said.themeBy}
          options={turns.flatMap((turn) => {
            const by = byOf(turn);
            return by === undefined ? [] : [{ value: by, label: said.bys[by] }];
          })}
          value={byOf(theme)}
          onChoose={(by) => set(turns.find((turn) => byOf(turn) === by))}
          across
        />
      )}
      {theme.kind !== 'free' &&
        (checks.length === 0 ? (
          <p class="soft">{said.themeHolds}</p>
        ) : (
          <div class="plan-group">
            <h3>{said.themeChecks}</h3>
            <ul class="hints">
              {checks.map((check) => {
                const sentence = words.themeSentence(check, name);
                return <li key={sentence}>{sentence}</li>;
              })}
            </ul>
          </div>
        ))}
    </Fold>
  );
}
