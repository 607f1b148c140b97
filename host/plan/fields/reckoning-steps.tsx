import type { AnyStep, Figure, Reckoning } from '../../../core/planning/figures/reckoning.ts';
import { type Source, sources } from '../../../core/planning/figures/sources.ts';
import type { Plan } from '../../../core/tasting.ts';
import { money, number } from '../../numbers.ts';
import { volume } from '../volume.ts';
import { words } from '../words.ts';
import { Fold } from './fold.tsx';

interface ReckoningStepsProps {
  /** What was reckoned, where one page has several. */
  readonly of?: string | undefined;
  readonly steps: Reckoning;
  /** In whose currency and measures. */
  readonly plan: Measures;
}

type Measures = Pick<Plan, 'currency' | 'volumeUnit'>;

/** Every step behind a figure, with where it comes from. */
export function ReckoningSteps({ of, steps, plan }: ReckoningStepsProps) {
  return (
    <Fold title={words.figures.reckoned} of={of} small>
      <ol class="reckoned">
        {steps.map((step, index) => (
          <li key={index}>
            <Step step={step} plan={plan} />
          </li>
        ))}
      </ol>
    </Fold>
  );
}

function Step({ step, plan }: { readonly step: AnyStep; readonly plan: Measures }) {
  const source = sources[step.source];
  const given = Object.entries<Figure>(step.inputs)
    .map(([name, figure]) => `${nameOf(name)} ${written(figure, plan, nameOf(name))}`)
    .join(' · ');
  return (
    <>
      <p class="reckoned-line">
        <span>{words.figures.steps[step.code]}</span>
        <strong class="figures">{written(step.result, plan)}</strong>
      </p>
      <p class="small soft">{given}</p>
      {source.checked !== 'definition' && <p class="small soft">{sourceSentence(source)}</p>}
    </>
  );
}

export function sourceSentence({ checked, title }: Source): string {
  switch (checked) {
    case 'from memory':
      return words.figures.fromMemory(title);
    case 'common practice':
      return words.figures.commonPractice;
    case 'text seen':
    case 'definition':
      return words.figures.source(title);
    default:
      return checked satisfies never;
  }
}

const inputNames: Readonly<Record<string, string>> = words.figures.inputs;
const nameOf = (input: string): string => inputNames[input] ?? input;

/** `name`: what stands before the figure; a unit of the same word is not said twice. */
function written({ value, unit }: Figure, { currency, volumeUnit }: Measures, name = ''): string {
  if (unit === 'minor units') return money(value, currency);
  if (unit === 'mL') return volume(value, volumeUnit, 3);
  const word = words.figures.unit(value, unit);
  return `${number(value, unit === 'kg/m3' ? 2 : 3)} ${word === name ? '' : word}`.trim();
}
