import type { Test } from 'supertest';

/** Asks for a PDF over HTTP and gives its bytes. */
export const askPdf = async (request: Test): Promise<Buffer> => {
  const answer = await request
    .buffer(true)
    .parse((response, done) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => {
        done(null, Buffer.concat(chunks));
      });
    })
    .expect(200)
    .expect('Content-Type', 'application/pdf');
  return answer.body as Buffer;
};
