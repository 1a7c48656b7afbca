import { once } from 'node:events';
import { createServer, get, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Request, Response } from 'express';
import { setClaim, withRequestContext } from '../requests/request-context';
import { followRequest, goOn, inTurns } from './long-work';

/** Express gives a request one thing more that is needed here. */
const asExpress = (incoming: IncomingMessage): Request =>
  Object.assign(incoming, {
    header: (name: string) => incoming.headers[name.toLowerCase()],
  }) as unknown as Request;

const claim = { key: 'k', method: 'POST', path: '/', bodyHash: '', status: 201 };

/** A server that works on each request until `end` says so, and how that work went. */
const workingServer = async (work: () => Promise<unknown>, booking: boolean) => {
  let ended: Promise<unknown> = Promise.resolve();
  const began = new Promise<void>((resolve) => {
    server = createServer((incoming, response) => {
      withRequestContext(undefined, () => {
        followRequest(asExpress(incoming), response as ServerResponse as Response);
        if (booking) setClaim(claim);
        ended = work().then(
          () => 'done',
          (error: unknown) => error,
        );
        resolve();
      });
    }).listen(0, '127.0.0.1');
  });
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const client = get({ port });
  client.on('error', () => undefined);
  await began;
  return { client, ended: () => ended };
};

let server = createServer();
afterEach(() => {
  server.close();
  server.closeAllConnections();
});

describe('long work', () => {
  it('ends at its next step when its client goes away', async () => {
    const endless = async () => {
      for (;;) await goOn();
    };
    const { client, ended } = await workingServer(endless, false);
    client.destroy();
    expect(await ended()).toMatchObject({ refusal: { code: 'work-stopped' } });
  });

  it('goes on when it is a booking: its tablet sends it again', async () => {
    let gone = false;
    const untilGone = async () => {
      for (let after = 0; after < 5; after += gone ? 1 : 0) {
        await new Promise((resolve) => setTimeout(resolve, 5));
        await goOn();
      }
    };
    const { client, ended } = await workingServer(untilGone, true);
    client.destroy();
    await new Promise((resolve) => client.once('close', resolve));
    gone = true;
    expect(await ended()).toBe('done');
  });

  it('lets others have their turn between the steps of a reckoning', async () => {
    function* slow() {
      for (let done = 0; done < 4; done += 1) {
        const until = performance.now() + 20;
        while (performance.now() < until) continue;
        yield { done, total: 4 };
      }
      return 'reckoned';
    }
    let turns = 0;
    const others = setInterval(() => (turns += 1), 1);
    const { ended } = await workingServer(() => inTurns(slow()), false);
    expect(await ended()).toBe('done');
    clearInterval(others);
    expect(turns).toBeGreaterThanOrEqual(3);
  });
});
