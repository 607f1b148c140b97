import { beforeWords } from '../../shared/language/en/before.ts';
import { Switch } from '../../shared/ui/switch.tsx';
import type { KitItem, SeatView } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { useRoom } from '../room/room.ts';

const items = Object.keys(words.kit.items) as KitItem[];

/** What somebody at home lays ready before the first glass; the host sees who is complete. */
export function KitList({ own }: { readonly own: SeatView }) {
  const { ask, seat } = useRoom();
  const { code } = seat.value;
  if (!own.remote) return null;
  return (
    <section class="stack-tight">
      <h2>{words.kit.title}</h2>
      {items.map((item) => (
        <Switch
          key={item}
          label={words.kit.items[item]}
          on={own.kit.includes(item)}
          onTurn={(ready) => void ask({ type: 'CheckKit', item, ready })}
        />
      ))}
      {code !== null && (
        // The evening stays where it is.
        <a class="button" href={`/kit/${encodeURIComponent(code)}`} target="_blank" rel="noreferrer">
          {beforeWords.tryDevices}
        </a>
      )}
    </section>
  );
}
