import '../shared/page/missing-methods.ts';
import { render } from 'preact';
import { config } from 'zod/v4/core';
import '../shared/ui/styles.css';
import '../shared/ui/swatch.css';
import './pages.css';
import './set-up/doors.css';
import './conduct/room.css';
import './conduct/now/now.css';
import './conduct/toolbar.css';
import './conduct/order/order.css';
import './conduct/table/table.css';
import '../shared/call/call-panel.css';
import './evening/seat.css';
import './evening/cover.css';
import './conduct/pace/pace.css';
import './conduct/story/story.css';
import '../shared/talk/guess.css';
import './invite/invite.css';
import './pouring/pouring.css';
import './print/sheets.css';
import './print/lists.css';
import './print/paper.css';
import './recap/recap.css';
import './recap/timeline.css';
import { newEnough } from '../shared/page/new-enough.ts';
import { keepFocus } from '../shared/ui/focus-keeper.ts';
import { applyTheme, readTheme } from '../shared/ui/theme.ts';
import { type HostKeys, openHostKeys } from './access/host-keys.ts';
import { keyLinkOf } from './access/key-link.ts';
import { landingOf } from './access/landing.ts';
import { App } from './app.tsx';
import { applyHandedness, readHandedness } from './handedness.ts';
import { hrefOf } from './route.ts';

/** Takes the key out of the address bar at once: from here on no screenshot, history or shoulder-surfer has it. */
function takeKeyFromAddress(keys: HostKeys): 'none' | 'kept' | 'in-memory' {
  const link = keyLinkOf(window.location.hash);
  if (link === undefined) return 'none';
  const kept = keys.keep(link);
  window.history.replaceState(null, '', `${window.location.pathname}${hrefOf(landingOf(link))}`);
  return kept ? 'kept' : 'in-memory';
}

// The policy of these pages refuses code made from text; asked for all the same, it is logged as a breach.
config({ jitless: true });
applyTheme(readTheme(), document.documentElement);
applyHandedness(readHandedness(), document.documentElement);
const keys = openHostKeys();
const taken = takeKeyFromAddress(keys);
const page = document.getElementById('host');
if (page && newEnough()) {
  page.replaceChildren();
  keepFocus(page);
  render(
    <App keys={keys} notKept={taken === 'in-memory'} takeKey={() => takeKeyFromAddress(keys) !== 'none'} />,
    page,
  );
}
