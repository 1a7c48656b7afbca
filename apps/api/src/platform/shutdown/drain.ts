import type { IncomingMessage, Server, ServerResponse } from 'node:http';

const SWEEP_MS = 50;

/**
 * Stops taking connections and waits for the requests under way. Closing a server alone would wait
 * for as long as a client goes on sending over a connection that it keeps: here the next answer
 * over each one is its last.
 */
export const drain = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.prependListener('request', (_request: IncomingMessage, response: ServerResponse) => {
      response.setHeader('Connection', 'close');
    });
    const sweep = setInterval(() => {
      server.closeIdleConnections();
    }, SWEEP_MS);
    server.close(() => {
      clearInterval(sweep);
      resolve();
    });
  });
