import { useSignal } from '@preact/signals';
import { Button } from '../../shared/ui/button.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { BothThemes } from './both-themes.tsx';
import { words } from './sample-words.ts';

export function Panels() {
  return (
    <>
      <BothThemes
        title="Notices"
        show={() => (
          <>
            <Notice kind="caution" title="Before the first glass">
              <p>
                Spit is always right. Not for anyone who is pregnant, driving, or on medicines that forbid it.
              </p>
            </Notice>
            <Notice kind="water" title="Water">
              <p>Drink half a glass, then rinse yours.</p>
            </Notice>
            <Notice kind="info">
              <p>Nobody sees your notes until you share them.</p>
            </Notice>
          </>
        )}
      />
      <BothThemes
        title="Nothing here yet"
        show={() => (
          <EmptyState
            title="No glass poured"
            action={
              <Button kind="primary" onPress={() => {}}>
                Add the first pour
              </Button>
            }
          >
            <p>Add what you mean to pour, and the order, the bottles and the evening follow.</p>
          </EmptyState>
        )}
      />
      <BothThemes title="Dialogs" show={() => <Question />} />
    </>
  );
}

function Question() {
  const open = useSignal(false);
  const shut = (): void => {
    open.value = false;
  };
  return (
    <>
      <Button
        onPress={() => {
          open.value = true;
        }}
      >
        End the evening
      </Button>
      {open.value && (
        <Dialog
          title="End the evening now?"
          onClose={shut}
          close={words.stays}
          actions={
            <Button kind="danger" onPress={shut}>
              End it
            </Button>
          }
        >
          <p>Two glasses have not been tasted. Everybody keeps their notes.</p>
        </Dialog>
      )}
    </>
  );
}
