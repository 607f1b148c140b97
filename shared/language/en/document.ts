/**
 * What stands in a page before its script runs: for a browser that is too old or has JavaScript switched off. Another
 * language is one more file of this shape.
 */
export interface DocumentWords {
  /** How the script of this language runs. */
  readonly direction: 'ltr' | 'rtl';
  readonly guestTooOld: string;
  readonly guestNoScript: string;
  readonly surveyTooOld: string;
  readonly surveyNoScript: string;
  readonly devicesTooOld: string;
  readonly devicesNoScript: string;
  readonly screenTooOld: string;
  readonly screenNoScript: string;
  readonly styleNoScript: string;
  readonly hostTitle: string;
  readonly hostTooOld: string;
  readonly hostNoScript: string;
}

export const documentWords: DocumentWords = {
  direction: 'ltr',
  guestTooOld:
    'If nothing else appears here, this browser is too old for the tasting. Please use a newer one, or ask your host for paper.',
  guestNoScript:
    'This page needs JavaScript to follow the room. Please turn it on, or ask your host for paper.',
  surveyTooOld:
    'If nothing else appears here, this browser is too old for these questions. Please use a newer one, or tell your host how used you are to tasting.',
  surveyNoScript:
    'This page needs JavaScript to ask its questions. Please turn it on, or tell your host how used you are to tasting.',
  devicesTooOld:
    'If nothing else appears here, this browser is too old to try camera and sound. Please use a newer one.',
  devicesNoScript: 'This page needs JavaScript to try camera and sound. Please turn it on.',
  screenTooOld:
    'One moment. If nothing else appears here, this screen’s browser is too old: connect a laptop, or do without it.',
  screenNoScript: 'This page shows the evening to the room and needs JavaScript.',
  styleNoScript: 'This page shows the parts at work and needs JavaScript.',
  hostTitle: 'Quietpour, for the host',
  hostTooOld: 'This page is loading. If nothing appears, this device’s browser is too old: use a newer one.',
  hostNoScript: 'Hosting needs JavaScript. Turn it on for this address, or use another browser.',
};
