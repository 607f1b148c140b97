import type { InvitationWords } from '../../core/planning/invitation/invitation.ts';
import {
  type InviteWords,
  invitationWords as invitationInEnglish,
  inviteWords as inviteInEnglish,
} from '../../shared/language/en/invite.ts';

/** The language of the invitation; the only place of it that knows which one it is. */
export const invitationWords: InvitationWords = invitationInEnglish;
export const inviteWords: InviteWords = inviteInEnglish;
