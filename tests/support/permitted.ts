import { consentsBefore, type KeptConsents, type Permits, permitsOf } from '../../shared/wire/permits.ts';
import type { SharingBefore } from '../../shared/wire/sharing.ts';

interface Given {
  readonly consents: KeptConsents;
  readonly permits: Permits;
}

/** What a stored page says of itself where its guest chose this on a page of before. */
export function givenBefore(sharing: SharingBefore): Given {
  const consents = consentsBefore(sharing);
  return { consents, permits: permitsOf(consents) };
}
