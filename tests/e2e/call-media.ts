import type { Page } from 'playwright-core';

/** Keeps the connections of a page, so that a test may ask what really goes over them. */
export function keepConnections(): void {
  const kept: RTCPeerConnection[] = [];
  const Original = window.RTCPeerConnection;
  window.RTCPeerConnection = class extends Original {
    constructor(configuration?: RTCConfiguration) {
      super(configuration);
      kept.push(this);
    }
  };
  Object.assign(window, { kept });
}

export interface Flow {
  /** Connections that stand. */
  readonly connected: number;
  /** Frames decoded of each picture that comes in, the least and all together. */
  readonly frames: number;
  /** Of what the page gives to its lines (W3C, webrtc-stats, RTCAudioSourceStats.totalAudioEnergy). */
  readonly energySent: number;
  readonly voicePacketsSent: number;
  readonly pictureBytesSent: number;
  /** Of what arrives (RTCInboundRtpStreamStats.totalAudioEnergy). */
  readonly energyHeard: number;
  readonly voicePacketsHeard: number;
}

/** Runs in the page: what has gone over its lines until now. */
export async function readFlow(): Promise<Flow> {
  const { kept } = window as unknown as { kept: RTCPeerConnection[] };
  const open = kept.filter(({ connectionState }) => connectionState === 'connected');
  const flow = {
    connected: open.length,
    frames: 0,
    energySent: 0,
    voicePacketsSent: 0,
    pictureBytesSent: 0,
    energyHeard: 0,
    voicePacketsHeard: 0,
  };
  for (const connection of open) {
    for (const stats of (await connection.getStats()).values()) {
      if (stats.type === 'media-source' && stats.kind === 'audio')
        flow.energySent += stats.totalAudioEnergy ?? 0;
      if (stats.type === 'outbound-rtp' && stats.kind === 'audio') flow.voicePacketsSent += stats.packetsSent;
      if (stats.type === 'outbound-rtp' && stats.kind === 'video') flow.pictureBytesSent += stats.bytesSent;
      if (stats.type === 'inbound-rtp' && stats.kind === 'video') flow.frames += stats.framesDecoded ?? 0;
      if (stats.type === 'inbound-rtp' && stats.kind === 'audio')
        flow.energyHeard += stats.totalAudioEnergy ?? 0;
      if (stats.type === 'inbound-rtp' && stats.kind === 'audio')
        flow.voicePacketsHeard += stats.packetsReceived ?? 0;
    }
  }
  return flow;
}

/** What has gone over the lines of a page until now. */
export const flowOf = (page: Page): Promise<Flow> => page.evaluate(readFlow);

/** What goes over them within a time. */
export async function flowWithin(page: Page, ms: number): Promise<Flow> {
  const before = await flowOf(page);
  await page.waitForTimeout(ms);
  const after = await flowOf(page);
  return {
    connected: after.connected,
    frames: after.frames - before.frames,
    energySent: after.energySent - before.energySent,
    voicePacketsSent: after.voicePacketsSent - before.voicePacketsSent,
    pictureBytesSent: after.pictureBytesSent - before.pictureBytesSent,
    energyHeard: after.energyHeard - before.energyHeard,
    voicePacketsHeard: after.voicePacketsHeard - before.voicePacketsHeard,
  };
}
