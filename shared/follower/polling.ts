import { NodeWebSocket, NodeXHR } from 'socket.io-client';

/**
 * The ways to the server where no WebSocket may get through, in the order in which they are tried. In a page both are the
 * browser's own (shared/build/light-libraries.ts).
 */
export const waysWithPolling = [NodeWebSocket, NodeXHR];
