import { useSignal } from '@preact/signals';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { helperLink } from '../access/key-link.ts';
import { reachableOrigin } from '../conduct/drawers/doorway-drawer.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { IssuedLink } from '../evening/issued-link.tsx';
import { words as hostWords, sentenceFor } from '../language.ts';

interface HelpersPhoneProps {
  readonly evening: EveningContext;
  readonly onClose: () => void;
}

/** The way of a second pair of hands to the same glasses, with a key that pours, lays and answers calls [S6]. */
export function HelperLink({ evening, onClose }: HelpersPhoneProps) {
  const { app, stored } = evening;
  const { tasting } = stored;
  const ending = useSignal(false);
  const end = async (): Promise<void> => {
    ending.value = true;
    const answer = await app.api.withdrawHelpers(tasting);
    ending.value = false;
    app.status.say(answer.ok ? words.helps.allEnded : sentenceFor(answer.code));
  };
  return (
    <Dialog
      title={words.helper}
      onClose={onClose}
      close={hostWords.close}
      actions={
        <Button kind="quiet" busy={ending.value} onPress={() => void end()}>
          {words.helps.endAll}
        </Button>
      }
    >
      <IssuedLink
        name={words.helps.show}
        hint={words.helperHint}
        label={words.helperLabel}
        issue={() => app.api.issueKey(tasting, { for: 'helper' })}
        linkOf={(key) => helperLink(reachableOrigin(evening), tasting, key)}
      />
    </Dialog>
  );
}
