import type { LinkState } from '../../shared/follower/connection.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { words } from '../language.ts';
import { PageTitle } from '../page/page-title.tsx';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { useRoom } from './room.ts';

type ClosedLink = Extract<LinkState, { status: 'refused' | 'dismissed' }>;

export const linkNeedsPerson = (link: LinkState): link is ClosedLink =>
  link.status === 'refused' || link.status === 'dismissed';

/** The link is closed for good until somebody does something: what happened, and what to do. */
export function LinkPage({ link, onDoor }: { readonly link: ClosedLink; readonly onDoor: () => void }) {
  const old = link.status === 'refused' && link.code === 'wrong-protocol';
  return (
    <main class="page">
      <PageTitle>{words.link.refusedTitle}</PageTitle>
      <Notice kind="info">{closedSentence(link)}</Notice>
      <Button kind="primary" onPress={() => location.reload()}>
        {words.link.reload}
      </Button>
      {!old && <Button onPress={onDoor}>{words.link.toDoor}</Button>}
    </main>
  );
}

function closedSentence(link: ClosedLink): string {
  if (link.status === 'dismissed') return words.link.dismissed[link.why];
  return link.code === 'wrong-protocol' ? words.link.wrongProtocol : refusalSentence(link.code);
}

/** How the link stands, quietly and in words; nothing while all is well. */
export function LinkLine() {
  const { deviceKeeps, follower } = useRoom();
  const link = follower.link.value;
  if (link.status === 'live' || linkNeedsPerson(link)) return null;
  const lost = deviceKeeps ? words.link.lost : words.link.lostKeepsNothing;
  return <p class="link-line">{link.status === 'connecting' ? words.link.connecting : lost}</p>;
}
