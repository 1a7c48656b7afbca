import { once } from 'node:events';
import { Agent, createServer, get, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { drain } from './drain';

describe('draining a web server', () => {
  it('finishes what is under way, and ends although a client keeps sending', async () => {
    const server = createServer((_request, response) => {
      setTimeout(() => response.end('done'), 60);
    }).listen(0, '127.0.0.1');
    await once(server, 'listening');
    const { port } = server.address() as AddressInfo;
    const agent = new Agent({ keepAlive: true, maxSockets: 1 });
    const ask = async (): Promise<string> => {
      const [response] = (await once(get({ port, agent }), 'response')) as [IncomingMessage];
      const [text] = (await once(response.setEncoding('utf8'), 'data')) as [string];
      return text;
    };
    const state = { answered: 0, refused: false };
    const sender = (async () => {
      while (!state.refused) {
        await ask().then(
          () => (state.answered += 1),
          () => (state.refused = true),
        );
      }
    })();
    await pause(200);
    const before = state.answered;
    await drain(server);
    await sender;
    expect(before).toBeGreaterThan(0);
    expect(state.answered).toBeGreaterThanOrEqual(before);
    expect(server.listening).toBe(false);
    agent.destroy();
  });
});
