import { Button } from '../../shared/ui/button.tsx';
import type { HttpAnswer } from '../../shared/wire/answer.ts';
import type { WaitingScreen } from '../../shared/wire/protocol.ts';
import { sentenceFor, words } from '../language.ts';
import type { EveningContext } from './evening-context.ts';
import { guestAddresses } from './guest-addresses.ts';

/** Screens for the whole room: which ask, which show, and how a new one finds its way here. */
export function RoomScreens({ evening: { stored, follower, app } }: { readonly evening: EveningContext }) {
  const { screens, screensAsking } = follower.presence.value;
  const [address] = guestAddresses(stored, window.location.origin);
  /** Says what went wrong, or what was done; a screen that no longer asks is simply gone. */
  const told = async (asked: Promise<HttpAnswer<null>>, done?: string): Promise<void> => {
    const answer = await asked;
    if (answer.ok) {
      if (done !== undefined) app.status.say(done);
    } else if (answer.code !== 'nothing-to-do') app.status.say(sentenceFor(answer.code));
  };
  return (
    <section class="screens" aria-labelledby="screens">
      <h2 id="screens">{words.screens.title}</h2>
      {screensAsking.map((screen) => (
        <Asks
          key={screen.id}
          screen={screen}
          onAnswer={(admit) => void told(app.api.answerScreen(stored.tasting, screen.id, admit))}
        />
      ))}
      {screens > 0 && (
        <p class="row-of-links">
          <span>{words.screens.shown(screens)}</span>
          <Button onPress={() => void told(app.api.dismissScreens(stored.tasting), words.screens.isOff)}>
            {words.screens.off}
          </Button>
        </p>
      )}
      <p class="small soft">
        {words.screens.address}{' '}
        <span dir="ltr" translate={false}>
          {address?.spoken}/screen
        </span>
      </p>
    </section>
  );
}

interface AsksProps {
  readonly screen: WaitingScreen;
  readonly onAnswer: (admit: boolean) => void;
}

function Asks({ screen: { number }, onAnswer }: AsksProps) {
  const { asks, check, letIn, notOurs, named } = words.screens;
  return (
    <div class="screen-asks">
      <p>
        <strong>{asks(number)}</strong> <span class="small">{check}</span>
      </p>
      <Button label={named(notOurs, number)} onPress={() => onAnswer(false)}>
        {notOurs}
      </Button>
      <Button kind="primary" label={named(letIn, number)} onPress={() => onAnswer(true)}>
        {letIn}
      </Button>
    </div>
  );
}
