import { Buffer } from 'node:buffer';
import { once } from 'node:events';
import { Agent, request } from 'node:http';
import { text } from 'node:stream/consumers';

const connections = new Agent({ keepAlive: true });

/** One request on a kept-alive connection: its status, and its text. */
export const send = async (url, token, { method = 'GET', body = '', headers = {} } = {}) => {
  const sent = request(url, {
    agent: connections,
    method,
    headers: {
      Authorization: `Bearer ${token}`,
      'Content-Type': 'application/json',
      'Content-Length': Buffer.byteLength(body),
      ...headers,
    },
  });
  sent.end(body);
  const [answer] = await once(sent, 'response');
  return { status: answer.statusCode, text: await text(answer) };
};
