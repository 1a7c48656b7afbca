import type { Readable } from 'node:stream';

const NEW_LINE = 0x0a;

/** Lines of a stream without their line end, however the chunks fall. */
export const linesOf = async function* (source: Readable): AsyncGenerator<Buffer, void> {
  let rest: Buffer[] = [];
  for await (const chunk of source as AsyncIterable<Buffer>) {
    let from = 0;
    for (let at = chunk.indexOf(NEW_LINE); at >= 0; at = chunk.indexOf(NEW_LINE, from)) {
      yield Buffer.concat([...rest, chunk.subarray(from, at)]);
      rest = [];
      from = at + 1;
    }
    if (from < chunk.length) rest.push(chunk.subarray(from));
  }
  if (rest.length > 0) yield Buffer.concat(rest);
};
