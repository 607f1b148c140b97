import { NodeWebSocket, NodeXHR } from 'socket.io-client';

/**
 * The ways to the server where no WebSocket may get through. In a page both are the
 * browser's own (shared/build/light-libraries.ts).
 */
export const waysWithPolling = [NodeWebSocket, NodeXHR] as const;
