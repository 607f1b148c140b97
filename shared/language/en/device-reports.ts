/** What the host reads of the devices that were tried at home: camera, sound and line. */
export const deviceReportWords = {
  title: 'Camera and sound at home',
  none: 'Nobody at home has tried camera and sound yet. The link to that page is in the invitation.',
  count: (ready: number, expected: number) => `${ready} of ${expected} ready`,
  ready: 'ready',
  voiceOnly: 'ready, voice only',
  amiss: {
    camera: { refused: 'camera not allowed', none: 'no camera', taken: 'camera in use elsewhere' },
    microphone: {
      refused: 'microphone not allowed',
      none: 'no microphone',
      taken: 'microphone in use elsewhere',
      silent: 'microphone hears nothing',
    },
    loudspeaker: { silent: 'no sound' },
    line: { slow: 'slow line', gone: 'no line' },
  },
  untried: {
    camera: 'camera not tried',
    microphone: 'microphone not tried',
    loudspeaker: 'loudspeaker not tried',
    line: 'line not tried',
  },
  reach: {
    network:
      'The evening’s own call works on this network only. For guests at home put a video call link in the plan, or ask whoever runs the server to set QUIETPOUR_STUN and QUIETPOUR_TURN.',
    public:
      'The evening’s own call goes from device to device over the internet. A few networks stop that; a relay (QUIETPOUR_TURN) gets through.',
    relay:
      'The evening’s own call goes from device to device, and through your relay where a network lets nothing else through.',
  },
};
export type DeviceReportWords = typeof deviceReportWords;
