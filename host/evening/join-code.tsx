import { codeGroups } from '../../shared/seats/seat-link.ts';
import { QrCode } from '../../shared/ui/qr-code.tsx';
import type { StoredPlan } from '../../shared/wire/http.ts';
import { words } from '../language.ts';
import { guestAddresses } from './guest-addresses.ts';

/** How guests come in: the square to scan, the address in letters and the code. */
export function JoinCode({ stored }: { readonly stored: StoredPlan }) {
  const [first, ...others] = guestAddresses(stored, window.location.origin);
  return (
    <div class="invitation">
      <div class="invitation-words">
        <p class="field-label">{words.doors.code}</p>
        <p class="code" translate={false}>
          {codeGroups(stored.code).map((group, place) => (
            <span key={place}>{group}</span>
          ))}
        </p>
        <p class="field-label">{words.doors.address}</p>
        <p class="address" dir="ltr" translate={false}>
          {first?.spoken}
        </p>
        <p class="soft small">
          {words.doors.how} {words.doors.sameNetwork}
        </p>
        {others.length > 0 && (
          <details class="small soft">
            <summary>{words.doors.otherAddress}</summary>
            <ul class="plain-list" dir="ltr">
              {others.map(({ spoken }) => (
                <li key={spoken}>{spoken}</li>
              ))}
            </ul>
          </details>
        )}
      </div>
      {first && <QrCode of={first.link} label={words.doors.scan(stored.code)} />}
    </div>
  );
}
