/** One build of the guests' page in one language, as its worker keeps it. */
export interface Version {
  /** Changes with any byte of the page. */
  readonly build: string;
  readonly language: string;
  /** Where this page lies, whichever language is asked for elsewhere. */
  readonly page: string;
  /** Paths of everything the page is made of or fetches later. The first is the script that the page names. */
  readonly files: readonly string[];
}

const ours = 'quietpour.guest.';

/** One store for each version and language, so that none overwrites what another page still needs. */
export const storeName = ({ language, build }: Version): string => `${ours}${language}.${build}`;

export const isOurStore = (name: string): boolean => name.startsWith(ours);
