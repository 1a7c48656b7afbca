import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

const root = join(__dirname, '../../..');

export const freePort = async (): Promise<number> => {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
};

/** Waits for something that has to come true; says what it was when it does not. */
export const until = async (what: string, holds: () => boolean, ms = 90_000): Promise<void> => {
  const end = Date.now() + ms;
  while (!holds()) {
    if (Date.now() > end) throw new Error(`It did not come about that ${what}`);
    await pause(50);
  }
};

const isGone = (child: ChildProcess): boolean =>
  child.exitCode !== null || child.signalCode !== null;

/** The service as a process of its own, on its own embedded database, as `npm start` runs it. */
export class ServiceProcess {
  private child: ChildProcess | undefined;
  output = '';

  constructor(
    readonly dataFolder: string,
    readonly port: number,
    /** Settings beyond the folder and the port, as another database. */
    private readonly settings: Readonly<Record<string, string>> = {},
  ) {}

  get origin(): string {
    return `http://127.0.0.1:${String(this.port)}`;
  }

  /** Starts it and waits until it is ready. The same folder and port again after a crash. */
  async start(): Promise<void> {
    this.output = '';
    const child = spawn(process.execPath, ['apps/api/tools/script.mjs', 'main.js'], {
      cwd: root,
      env: {
        PATH: process.env['PATH'],
        PORT: String(this.port),
        BALLOTIN_DATA: this.dataFolder,
        BALLOTIN_URL: this.origin,
        LOG_LEVEL: 'warn',
        ...this.settings,
      },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    this.child = child;
    const hear = (chunk: Buffer): void => {
      this.output += chunk.toString('utf8');
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    await until('the service is ready', () => {
      if (isGone(child)) throw new Error(`The service ended:\n${this.output}`);
      return this.output.includes('Ballotin is ready');
    });
  }

  /** The secret in the link with which the first owner signs up. */
  get ownerToken(): string {
    const token = /first-owner\?token=(\S+)/.exec(this.output)?.[1];
    if (token === undefined) throw new Error(`No link for the owner in:\n${this.output}`);
    return token;
  }

  get databasePid(): number {
    const file = join(this.dataFolder, 'cluster', 'postmaster.pid');
    return Number(readFileSync(file, 'utf8').split('\n')[0]);
  }

  async kill(): Promise<void> {
    await this.end('SIGKILL');
  }

  /** Asks it to stop, as Ctrl-C does, and gives its exit code. */
  async stop(): Promise<number | null> {
    return this.end('SIGTERM');
  }

  private async end(signal: NodeJS.Signals): Promise<number | null> {
    const child = this.child;
    if (child === undefined) return null;
    if (!isGone(child)) {
      child.kill(signal);
      await once(child, 'exit');
    }
    return child.exitCode;
  }

  /** Kills the database server outright, its session processes with it where that can be seen. */
  killDatabase(): void {
    const pid = this.databasePid;
    for (const victim of [pid, ...childrenOf(pid)]) {
      try {
        process.kill(victim, 'SIGKILL');
      } catch {
        // It has ended by itself meanwhile.
      }
    }
  }
}

const childrenOf = (pid: number): number[] => {
  try {
    const text = readFileSync(`/proc/${String(pid)}/task/${String(pid)}/children`, 'utf8');
    return text.trim().split(' ').filter(Boolean).map(Number);
  } catch {
    return [];
  }
};
