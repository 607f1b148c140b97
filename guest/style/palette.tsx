import { BothThemes } from './both-themes.tsx';

const grounds = ['ground', 'card', 'sunk', 'accent-soft', 'act-soft', 'water-soft'] as const;
const inks = ['ink', 'ink-soft', 'accent', 'act', 'water'] as const;

/** The inks on the grounds they are made for. */
export function Palette() {
  return (
    <BothThemes
      title="Colours"
      show={() => (
        <ul class="style-grounds">
          {grounds.map((ground) => (
            <li key={ground} class={`style-ground style-ground-${ground}`}>
              <span class="small">{ground}</span>
              {inks.map((ink) => (
                <span key={ink} class={`style-ink style-ink-${ink}`}>
                  {ink}
                </span>
              ))}
            </li>
          ))}
        </ul>
      )}
    />
  );
}
