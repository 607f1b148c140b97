import type { StoredPlan } from '../../shared/wire/http.ts';
import { hostLink } from '../access/key-link.ts';
import type { AppContext } from '../app-context.ts';
import { guestAddresses } from '../evening/guest-addresses.ts';
import { IssuedLink } from '../evening/issued-link.tsx';
import { Fold } from '../plan/fields/fold.tsx';
import { words } from '../plan/words.ts';

interface PhoneLinkProps {
  readonly stored: StoredPlan;
  readonly app: AppContext;
}

/** The way from the tablet to the phone whose camera takes the labels; on a phone it is not shown. */
export function PhoneLink({ stored, app }: PhoneLinkProps) {
  const said = words.ahead;
  const own = window.location.origin;
  const origin = new URL(guestAddresses(stored, own)[0]?.link ?? own).origin;
  return (
    <div class="ahead-on-phone">
      <Fold title={said.onPhone}>
        <IssuedLink
          name={said.onPhone}
          hint={said.onPhoneHint}
          label={said.onPhoneLabel}
          issue={() => app.api.issueKey(stored.tasting, { for: 'host' })}
          linkOf={(key) => hostLink(origin, stored.tasting, key)}
        />
      </Fold>
    </div>
  );
}
