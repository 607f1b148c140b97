import { useId, useState } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { copyText } from '../page/clipboard.ts';
import { useOwnLink } from './own-link.ts';
import { useRoom } from './room.ts';

interface OwnLinkFieldProps {
  readonly words: {
    readonly show: string;
    readonly label: string;
    readonly copy: string;
    readonly copied: string;
    readonly byHand: string;
  };
}

/** This guest's own link, hidden until it is asked for: whoever photographs it has the seat. */
export function OwnLinkField({ words }: OwnLinkFieldProps) {
  const { status } = useRoom();
  const [link, setLink] = useState<string>();
  const ownLink = useOwnLink();
  const id = useId();
  if (link === undefined) return <Button onPress={async () => setLink(await ownLink())}>{words.show}</Button>;
  return (
    <>
      <label class="field-label" for={id}>
        {words.label}
      </label>
      <textarea
        class="field-input seat-link"
        id={id}
        readOnly
        rows={4}
        value={link}
        onFocus={(event) => event.currentTarget.select()}
      />
      <Button onPress={async () => status.say((await copyText(link)) ? words.copied : words.byHand)}>
        {words.copy}
      </Button>
    </>
  );
}
