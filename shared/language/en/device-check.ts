/** The page on which a guest at home tries camera, sound and line before the evening. In English. */
export const deviceCheckWords = {
  language: 'en',
  title: (tasting: string) =>
    tasting === '' ? 'Try camera and sound' : `Try camera and sound for “${tasting}”`,
  lead: 'At home you see and hear the table through this phone. Try it with the phone that you will use: it takes half a minute.',
  private: 'Nobody sees or hears you here, and nothing is recorded.',
  begin: 'Begin',
  again: 'Try once more',
  stop: 'Switch camera and microphone off',
  plainHttp:
    'Browsers lend the camera and the microphone only to addresses that begin with https, and this one does not. Ask your host for such an address, or use the video call below. The tone and the line you can try here.',
  noDevices: 'This browser lends no page a camera or a microphone. Please try another one.',
  noCall: 'This browser cannot take part in the call. Please try another one.',
  callLink: 'Video call',
  parts: { camera: 'Camera', microphone: 'Microphone', loudspeaker: 'Loudspeaker', line: 'Line' },
  untried: 'Not tried yet.',
  asking: 'Your browser asks whether this page may use it: please say yes.',
  camera: {
    works: 'It works. So others see you.',
    refused:
      'It was not allowed. Allow the camera for this page in the browser’s settings, then try once more.',
    none: 'There is none on this device. The others hear you; that is enough.',
    taken: 'Another program is using it. Close that one, then try once more.',
  },
  picture: 'Your own picture, as in a mirror',
  microphone: {
    works: 'It works: it heard you.',
    refused:
      'It was not allowed. Allow the microphone for this page in the browser’s settings, then try once more.',
    none: 'There is none on this device. Connect a headset, or take another phone.',
    taken: 'Another program is using it, perhaps a phone call. Close that one, then try once more.',
    silent: 'It heard nothing. Is it muted, or covered? Try once more and speak a little louder.',
  },
  speak: 'Say something: the bar should move.',
  level: 'Loudness',
  loudspeaker: {
    works: 'It works.',
    silent: 'Turn the volume up, and switch silent mode off. Then play the tone once more.',
  },
  play: 'Play the tone',
  tone: 'The tone that calls you back when your eyes are closed.',
  heard: 'I heard it',
  unheard: 'I heard nothing',
  measuring: 'Measuring…',
  line: {
    works: 'Good enough for pictures and voices.',
    voice: 'Enough for voices. Leave pictures off, or move closer to your Wi-Fi.',
    slow: 'Too slow for a call. Move closer to your Wi-Fi, or try the mobile network.',
    gone: 'No answer from your host’s server. Check the network, then try once more.',
  },
  figures: (roundTrip: number, upward: string) =>
    `${roundTrip}\u00a0ms there and back, ${upward}\u00a0Mbit/s upwards`,
  reach: {
    network:
      'The call of this evening works in the host’s own network only. Ask your host whether they use another video call.',
    public: 'The call goes from device to device. Most networks at home let it through.',
    relay:
      'The call goes from device to device, or through your host’s relay where your network asks for it.',
  },
  tell: 'Tell your host',
  tellHint: 'Your host sees your name and how these four did, and nobody else does.',
  name: 'Your name',
  nameHint: 'As your host knows you.',
  send: 'Tell my host',
  sendAgain: 'Tell my host again',
  told: 'Your host knows how it went. You can try again at any time until the evening.',
  takeBack: 'Take it back',
  takenBack: 'Your host sees nothing of it any more.',
  noName: 'Write your name, so that your host knows who is ready.',
  whenAndWhere: 'When and where',
  finished: 'This tasting is over, so there is nothing to try any more.',
};
export type DeviceCheckWords = typeof deviceCheckWords;
