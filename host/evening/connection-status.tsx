import type { LinkState } from '../../shared/follower/connection.ts';
import { words } from '../language.ts';

interface ConnectionStatusProps {
  readonly link: LinkState;
  readonly hosts: number;
}

/** The state of the link in words, with a mark whose shape says the same. */
export function ConnectionStatus({ link, hosts }: ConnectionStatusProps) {
  const word =
    link.status === 'live'
      ? words.link.live
      : link.status === 'connecting'
        ? words.link.connecting
        : words.link.lost;
  return (
    <p class={`link-word link-${link.status}`}>
      {word}
      {hosts > 1 && <span class="soft"> · {words.link.hosts(hosts)}</span>}
    </p>
  );
}
