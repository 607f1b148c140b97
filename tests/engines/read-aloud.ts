import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { compile } from '../../core/running-order/compile.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { House } from '../server/support/house.ts';
import { plan, screenOf } from './evening.ts';
import { type Orca, openOrca } from './orca.ts';
import { openFirefox } from './puppeteer.ts';
import { Visitor } from './visitor.ts';

const kept = new URL('../screen-reader', import.meta.url).pathname;

/** What Orca says of an evening, to a guest and to a host, into a text for people to read. */
export async function keepWhatIsRead(): Promise<void> {
  mkdirSync(kept, { recursive: true });
  for (const role of ['guest', 'host'] as const) {
    const orca = await openOrca();
    try {
      writeFileSync(join(kept, `${role}.txt`), await readEvening(orca, role));
    } finally {
      await orca.close();
    }
  }
}

async function readEvening(orca: Orca, role: 'guest' | 'host'): Promise<string> {
  const house = await House.open();
  const device = await openFirefox({ width: 1000, height: 760 }, false, { world: orca.world });
  const lines: string[] = [];
  const note = async (moment: string): Promise<void> => {
    lines.push(`# ${moment}`, ...(await orca.said()), '');
  };
  /** From the heading on through the page, by the key that leads from one thing to the next. */
  const walk = async (moment: string, keys: number): Promise<void> => {
    // Whoever is at its end already would leave the page.
    await device.read("document.querySelector('h1')?.focus()");
    await orca.said();
    for (let count = 0; count < keys; count += 1) {
      await device.key('Tab');
      await note(`${moment}, Tab ${count + 1}`);
    }
  };
  try {
    const made = await house.plan(plan);
    const conductor = await house.host(made);
    await conductor.host({ type: 'OpenDoors' });
    const visitor = new Visitor(device);
    if (role === 'guest') {
      await device.open(`${house.url}/j/${made.code}?language=en`);
      await note('the invitation');
      await walk('the invitation', 4);
      await visitor.types(guestWords.invitation.name, 'Noor');
      await visitor.presses('button', guestWords.invitation.sit);
      await note('the cautions');
      await visitor.presses('button', guestWords.cautions.accept);
    } else {
      await house.guest(made, 'Noor');
      await device.open(`${house.url}/host?language=en#tasting=${made.tasting}&key=${made.hostKey}`);
      await note('the doors');
      await visitor.presses('link', hostWords.doors.toRoom);
    }
    await note('gathering');
    const seen = new Set<string>();
    for (const cue of compile(plan)) {
      const screen = screenOf(cue);
      if (seen.has(screen) || cue.kind === 'gathering') continue;
      seen.add(screen);
      await conductor.host({ type: 'JumpTo', cue: cue.id });
      await note(screen);
      if (screen === 'step-swirl') await walk(screen, 5);
      if (screen === 'step-write-nose') await walk(screen, role === 'guest' ? 6 : 3);
      if (cue.kind === 'ranking') await walk(screen, 5);
      if (cue.kind === 'discussion') {
        await conductor.host({ type: 'OpenDiscussion', pours: [...cue.pours] });
        await note('the talk opens');
        await walk('the talk', 4);
      }
      if (cue.kind === 'reveal') {
        await conductor.host({ type: 'Reveal', pours: [...cue.pours] });
        await note('the names are told');
      }
    }
    await conductor.host({ type: 'Finish' });
    await note('the end');
    conductor.close();
  } finally {
    await device.close();
    await house.close();
  }
  return lines.join('\n');
}
