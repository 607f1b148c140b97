import { Icon } from '../../shared/ui/icon.tsx';
import * as noticeStrokes from '../../shared/ui/notice-strokes.ts';
import * as strokes from '../../shared/ui/strokes.ts';
import { BothThemes } from './both-themes.tsx';

const turning = new Set(['next', 'back', 'undo', 'resume']);

export function Icons() {
  return (
    <BothThemes
      title="Icons"
      show={() => (
        <ul class="style-icons">
          {[...Object.entries(strokes), ...Object.entries(noticeStrokes)].map(([name, path]) => (
            <li key={name}>
              <Icon of={path} turns={turning.has(name)} />
              <span class="small">{name}</span>
            </li>
          ))}
        </ul>
      )}
    />
  );
}
