import { type DeviceCheckWords, deviceCheckWords } from '../../shared/language/en/device-check.ts';

/** The one place where the language of this page is chosen. */
export const words: DeviceCheckWords = deviceCheckWords;
