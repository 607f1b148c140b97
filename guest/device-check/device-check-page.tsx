import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { InvitationLoader } from '../page/invitation-loader.tsx';
import { PageTitle } from '../page/page-title.tsx';
import { DeviceCheck } from './device-check.tsx';
import { words } from './language.ts';
import { TellHost } from './tell-host.tsx';

/** Before the evening, for whoever joins from home: does what the call needs work on this device? */
export const DeviceCheckPage = () => (
  <InvitationLoader titleOf={words.title}>
    {(code, { stage, title, callLink, callReach }) =>
      stage === 'finished' ? (
        <main class="page">
          <PageTitle>{words.title(title)}</PageTitle>
          <Notice kind="info">{words.finished}</Notice>
        </main>
      ) : (
        <main class="page">
          <header class="stack-tight">
            <PageTitle>{words.title(title)}</PageTitle>
            <p class="lead">{words.lead}</p>
            <p class="soft small">{words.private}</p>
          </header>
          <DeviceCheck callLink={callLink}>{(tried) => <TellHost code={code} tried={tried} />}</DeviceCheck>
          <p class="soft small">{words.reach[callReach]}</p>
          <a class="button button-quiet" href={`/j/${encodeURIComponent(code)}`}>
            {words.whenAndWhere}
          </a>
          <LanguageChoice />
        </main>
      )
    }
  </InvitationLoader>
);
