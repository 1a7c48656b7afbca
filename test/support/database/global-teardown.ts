import { stopTestServer } from './test-server';

export default async function tearDown(): Promise<void> {
  await stopTestServer();
}
