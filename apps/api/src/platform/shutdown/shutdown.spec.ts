import { atShutdown, shutDown } from './shutdown';

describe('the end of the service', () => {
  const exitCode = process.exitCode;
  afterEach(() => {
    process.exitCode = exitCode;
  });

  it('stops what was started last first, each once', async () => {
    const stopped: string[] = [];
    atShutdown('the database', () => void stopped.push('database'));
    atShutdown('the service', async () => {
      await Promise.resolve();
      stopped.push('service');
    });
    await Promise.all([shutDown(), shutDown()]);
    await shutDown();
    expect(stopped).toEqual(['service', 'database']);
  });

  it('leaves out what was stopped already', async () => {
    const stopped: string[] = [];
    const forget = atShutdown('the service', () => void stopped.push('service'));
    forget();
    await shutDown();
    expect(stopped).toEqual([]);
  });

  it('stops the database also when the service fails to stop, and says so', async () => {
    const said = jest.spyOn(console, 'error').mockImplementation(() => undefined);
    const stopped: string[] = [];
    atShutdown('the database', () => void stopped.push('database'));
    atShutdown('the service', () => Promise.reject(new Error('busy')));
    await shutDown();
    expect(stopped).toEqual(['database']);
    expect(process.exitCode).toBe(1);
    expect(said).toHaveBeenCalledWith('Stopping the service failed:', expect.any(Error));
    said.mockRestore();
  });
});
