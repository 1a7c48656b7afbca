import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { isAlive, processStart, runsProgram } from './system-process';

describe('a process of the system', () => {
  it('is alive until it ends', async () => {
    const child = spawn(process.execPath, ['-e', 'setInterval(() => undefined, 1000)']);
    const pid = child.pid ?? 0;
    expect(isAlive(pid)).toBe(true);
    child.kill('SIGKILL');
    await once(child, 'exit');
    expect(isAlive(pid)).toBe(false);
  });

  it('is told from another one with the same id by when it began', () => {
    expect(processStart(process.pid)).toBe(processStart(process.pid));
    expect(processStart(process.pid)).not.toBe(processStart(process.ppid));
  });

  it('is known by the name of its program', () => {
    expect(runsProgram(process.pid, 'postgres')).toBe(false);
    expect(runsProgram(2 ** 30, 'postgres')).toBe(false);
  });
});
