import { textFields } from '../../shared/notes/entry.ts';
import { Switch } from '../../shared/ui/switch.tsx';
import type { PourId } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { useRoom } from '../seat/room.ts';

interface ShareSwitchProps {
  readonly pour: PourId;
  readonly glass: string;
  readonly name: string | null;
}

/** Off until it is switched on, for one glass, and off again at any time [Q2]. What would be seen stands below it. */
export function ShareSwitch({ pour, glass, name }: ShareSwitchProps) {
  const { follower, share, status } = useRoom();
  const written = textFields.flatMap((field) => {
    const value = follower.notebook.read(pour, field).trim();
    return value === '' ? [] : [{ field, value }];
  });
  const on = follower.sharings.value.get(pour) === 'shared';
  return (
    <div class="share">
      <Switch
        label={words.share.share(glass)}
        hint={name ?? undefined}
        on={on}
        onTurn={async (wanted) => {
          if (await share(pour, wanted)) {
            status.say(wanted ? words.share.on(glass) : words.share.off(glass), { unseen: true });
          }
        }}
      />
      {written.length === 0 ? (
        <p class="soft small">{words.share.nothing}</p>
      ) : (
        <details>
          <summary>
            {words.share.yours}
            <span class="visually-hidden"> ({glass})</span>
          </summary>
          <dl class="own-words">
            {written.map(({ field, value }) => (
              <div key={field}>
                <dt>{words.fields[field]}</dt>
                <dd dir="auto">{value}</dd>
              </div>
            ))}
          </dl>
        </details>
      )}
    </div>
  );
}
