/**
 * Why a camera or microphone is not to be had: no https, its owner or the browser said no, there is none, another program has
 * it, it was pulled out, or something else.
 */
export type MediaFailure = 'needs-https' | 'refused' | 'none' | 'taken' | 'unplugged' | 'failed';

/** The names of W3C, Media Capture and Streams, section 10.2 (getUserMedia), in what a person can do something about. */
export function failureOf(error: unknown): 'refused' | 'none' | 'taken' | 'failed' {
  switch (error instanceof Error ? error.name : '') {
    case 'NotAllowedError':
    case 'SecurityError':
      return 'refused';
    case 'NotFoundError':
    case 'OverconstrainedError':
      return 'none';
    case 'NotReadableError':
    case 'AbortError':
      return 'taken';
    default:
      return 'failed';
  }
}
