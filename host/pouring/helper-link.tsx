import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { hostLink } from '../access/key-link.ts';
import { reachableOrigin } from '../conduct/drawers/doorway-drawer.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { IssuedLink } from '../evening/issued-link.tsx';
import { words as hostWords } from '../language.ts';

interface HelpersPhoneProps {
  readonly evening: EveningContext;
  readonly onClose: () => void;
}

/** The way of a second pair of hands to the same glasses. */
export function HelperLink({ evening, onClose }: HelpersPhoneProps) {
  const { tasting } = evening.stored;
  return (
    <Dialog
      title={words.helper}
      onClose={onClose}
      actions={
        <Button kind="primary" onPress={onClose}>
          {hostWords.close}
        </Button>
      }
    >
      <IssuedLink
        name={words.helper}
        hint={words.helperHint}
        label={words.helperLabel}
        issue={() => evening.app.api.issueKey(tasting, { for: 'host' })}
        linkOf={(key) => hostLink(reachableOrigin(evening), tasting, key)}
      />
    </Dialog>
  );
}
