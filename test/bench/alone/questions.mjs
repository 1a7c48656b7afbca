/* global performance */
// Reads { databaseUrl, options, query, url, token, runs } from standard input; asks by the bare query
// and over HTTP, turn by turn, so that both meet the same machine. Writes { straight, served, text }:
// milliseconds of each run, and the answer.
import { json } from 'node:stream/consumers';
import pg from 'pg';
import { send } from './http.mjs';

const { databaseUrl, options, query, url, token, runs } = await json(process.stdin);
const client = new pg.Client({ connectionString: databaseUrl, options });
await client.connect();

const clocked = async (work) => {
  const before = performance.now();
  await work();
  return performance.now() - before;
};

const straight = [];
const served = [];
let text = '';
// The first two warm up and aren't counted.
for (let run = -2; run < runs; run += 1) {
  const bareMs = await clocked(() => client.query(query.text, query.values));
  const httpMs = await clocked(async () => {
    const answer = await send(url, token);
    if (answer.status !== 200) throw new Error(`${answer.status}: ${answer.text}`);
    text = answer.text;
  });
  if (run < 0) continue;
  straight.push(bareMs);
  served.push(httpMs);
}
await client.end();
process.stdout.write(JSON.stringify({ straight, served, text }));
