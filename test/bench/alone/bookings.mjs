/* global performance */
// Reads { databaseUrl, options, seconds, places } from standard input; sends each place's recorded
// statements, then its booking over HTTP, with all places at once. Writes { bare, lost, http, busy }:
// bookings per second, statements' transactions lost to conflicts, bookings refused as busy. Each side
// runs once before it counts: a service that has just started still compiles its code.
import { randomUUID } from 'node:crypto';
import { json } from 'node:stream/consumers';
import pg from 'pg';
import { send } from './http.mjs';

const { databaseUrl, options, seconds, places } = await json(process.stdin);
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** Runs for the agreed time with all places at once; bookings per second. */
const perSecond = async (book) => {
  const begun = performance.now();
  const end = begun + seconds * 1000;
  const counts = await Promise.all(
    places.map(async (place) => {
      let count = 0;
      while (performance.now() < end) if (await book(place)) count += 1;
      return count;
    }),
  );
  const took = (performance.now() - begun) / 1000;
  return counts.reduce((sum, count) => sum + count, 0) / took;
};

const pool = new pg.Pool({ connectionString: databaseUrl, options, max: places.length });
pool.on('error', () => undefined);

/** Ids and keys that a statement brings into the world are made anew each time it is sent. */
const sendAgain = async ({ statements, known }) => {
  const fresh = new Map(known.map((id) => [id, id]));
  const renew = (value) => {
    if (typeof value !== 'string' || !UUID.test(value)) return value;
    const id = fresh.get(value) ?? randomUUID();
    fresh.set(value, id);
    return id;
  };
  const client = await pool.connect();
  try {
    for (const { name, text, values } of statements) {
      await client.query({ name, text, values: values.map(renew) });
    }
    return true;
  } catch {
    await client.query('ROLLBACK');
    return false;
  } finally {
    client.release();
  }
};

const book = async ({ url, token, body }) => {
  const headers = { 'Idempotency-Key': randomUUID() };
  const { status, text } = await send(url, token, { method: 'POST', body, headers });
  if (status !== 201 && status !== 409) throw new Error(`${status}: ${text}`);
  return status === 201;
};

const counted = (work) => {
  const counter = { failed: 0 };
  const run = async (place) => {
    if (await work(place)) return true;
    counter.failed += 1;
    return false;
  };
  return [counter, run];
};

await perSecond(sendAgain);
const [lost, bareRun] = counted(sendAgain);
const bare = await perSecond(bareRun);
await pool.end();
await perSecond(book);
const [busy, httpRun] = counted(book);
const http = await perSecond(httpRun);
process.stdout.write(JSON.stringify({ bare, lost: lost.failed, http, busy: busy.failed }));
