import { CameraPage } from './camera-page.tsx';
import { Television } from './television.tsx';

/** Fetched beside the room's screen, which needs nothing of it to show the room. */
export const callPages = { CameraPage, Television };
