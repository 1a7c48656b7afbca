import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';

/** Listens for a moment on the loopback; 0 asks the system for any free port. */
const tryPort = (port: number): Promise<number | undefined> =>
  new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => {
      resolve(undefined);
    });
    server.listen({ port, host: '127.0.0.1', exclusive: true }, () => {
      const address = server.address();
      server.close(() => {
        resolve(typeof address === 'object' ? address?.port : undefined);
      });
    });
  });

/** The port of the last time while it is free, else another one, which is then remembered. */
export const rememberedPort = async (file: string): Promise<number> => {
  const last = existsSync(file) ? Number(readFileSync(file, 'utf8')) : 0;
  // Ports below 1024 are root's, and the server never runs as root.
  const usable = Number.isInteger(last) && last >= 1_024 && last < 65_536;
  const port = (usable ? await tryPort(last) : undefined) ?? (await tryPort(0));
  if (port === undefined) throw new Error('No free port on 127.0.0.1');
  if (port !== last) writeFileSync(file, String(port));
  return port;
};
