import { atShutdown } from '../shutdown';
import type { Binaries } from './binaries';
import { findBinaries } from './binaries';
import { databaseUrl, prepareCluster, writeSettings } from './cluster';
import { type DataHome, settleHome } from './data-home';
import { DatabaseStartError } from './database-start-error';
import { lockFolder } from './folder-lock';
import { rememberedPort } from './free-port';
import { guard, startPostmaster, stopArguments, stopOrphan } from './postmaster';
import { runBinary, runBinaryNow } from './run-binary';
import { openLog } from './server-log';
import { isAlive } from './system-process';

export interface EmbeddedServerOptions {
  /** The folder of this database; made when it is missing. */
  readonly home: string;
  /** False only in tests: no fsync. */
  readonly durable: boolean;
  /** Receives plain sentences for whoever looks at the console. */
  readonly say: (line: string) => void;
  /** Called when the server's process has been started and only has to be waited for. */
  readonly onStarting?: (() => void) | undefined;
}

export interface EmbeddedServer {
  /** Connection URL of one database of this server. */
  readonly urlOf: (database: string) => string;
  readonly stop: () => Promise<void>;
}

const WATCH_MS = 1_000;
const RESTARTS_PER_HOUR = 5;

/** The running server of one home: starts it, starts it again when it dies, stops it. */
class Running {
  private pid = 0;
  private dismissGuard = (): void => undefined;
  private timer: NodeJS.Timeout | undefined;
  private restarts: number[] = [];
  private busy: Promise<void> | undefined;
  private stopping: Promise<void> | undefined;

  constructor(
    private readonly home: DataHome,
    private readonly binaries: Binaries,
    private readonly say: (line: string) => void,
  ) {}

  async start(onStarting = (): void => undefined): Promise<void> {
    this.pid = await startPostmaster(this.home, this.binaries, onStarting);
    const { dismiss } = guard(this.pid, this.home.account);
    this.dismissGuard = dismiss;
    this.timer = setInterval(() => {
      this.busy ??= this.restartIfDead().finally(() => (this.busy = undefined));
    }, WATCH_MS).unref();
  }

  private async restartIfDead(): Promise<void> {
    if (isAlive(this.pid) || this.stopping !== undefined) return;
    clearInterval(this.timer);
    this.dismissGuard();
    const hourAgo = Date.now() - 3_600_000;
    this.restarts = [...this.restarts.filter((at) => at > hourAgo), Date.now()];
    if (this.restarts.length > RESTARTS_PER_HOUR) {
      this.say(`The database ended too often; see ${this.home.log}. Start the service again.`);
      return;
    }
    this.say('The database ended unexpectedly. Starting it again; it recovers what was saved.');
    try {
      await this.start();
      this.say('The database is back.');
    } catch (error) {
      this.say(error instanceof Error ? error.message : String(error));
    }
  }

  stop(): Promise<void> {
    this.stopping ??= this.stopOnce();
    return this.stopping;
  }

  private async stopOnce(): Promise<void> {
    clearInterval(this.timer);
    await this.busy;
    clearInterval(this.timer);
    const { cluster, folder, account } = this.home;
    if (isAlive(this.pid)) {
      const { code, output } = await runBinary(
        this.binaries.pgCtl,
        stopArguments(cluster),
        folder,
        account,
      );
      if (code !== 0) throw new DatabaseStartError(`The database did not stop:\n${output}`);
    }
    this.dismissGuard();
  }

  stopNow(): void {
    if (!isAlive(this.pid)) return;
    const { cluster, folder, account } = this.home;
    runBinaryNow(this.binaries.pgCtl, stopArguments(cluster), folder, account);
  }
}

/** Starts the PostgreSQL that comes with the program, on the loopback, for this process alone. */
export const startEmbeddedServer = async (
  options: EmbeddedServerOptions,
): Promise<EmbeddedServer> => {
  const home = settleHome(options.home, options.say);
  const lock = lockFolder(home.folder);
  try {
    const binaries = findBinaries(home.folder, home.account);
    await stopOrphan(home, binaries);
    const password = await prepareCluster(home, binaries);
    const port = await rememberedPort(home.portFile);
    writeSettings(home, port, options.durable);
    openLog(home.log, home.account);
    const running = new Running(home, binaries, options.say);
    await running.start(options.onStarting);
    const onExit = (): void => running.stopNow();
    process.once('exit', onExit);
    const stop = async (): Promise<void> => {
      await running.stop();
      process.off('exit', onExit);
      forget();
      lock.release();
    };
    const forget = atShutdown('the database', stop);
    return {
      urlOf: (database) => databaseUrl(password, port, database),
      stop,
    };
  } catch (error) {
    lock.release();
    throw error;
  }
};
