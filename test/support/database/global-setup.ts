import { startTestServer } from './test-server';

/** One embedded cluster per run, whichever sizes of test the run has. */
export default async function setUp(): Promise<void> {
  await startTestServer();
}
