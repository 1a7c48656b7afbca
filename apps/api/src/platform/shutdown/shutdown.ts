type Step = () => Promise<void> | void;

const steps: { name: string; step: Step }[] = [];
let running: Promise<void> | undefined;
let listening = false;

/** A client that never lets go of its connection must not keep what comes after from stopping. */
const LIMIT_MS = 15_000;

const limit = (name: string): Promise<never> =>
  new Promise((_resolve, reject) => {
    setTimeout(() => {
      reject(new Error(`${name} took too long`));
    }, LIMIT_MS).unref();
  });

const runSteps = async (): Promise<void> => {
  for (let next = steps.pop(); next !== undefined; next = steps.pop()) {
    try {
      await Promise.race([next.step(), limit(next.name)]);
    } catch (error) {
      process.exitCode = 1;
      console.error(`Stopping ${next.name} failed:`, error);
    }
  }
};

/** Runs every step that is registered, last registered first; a second call waits for the first. */
export const shutDown = (): Promise<void> => {
  running ??= runSteps().finally(() => {
    running = undefined;
  });
  return running;
};

const onSignal = (): void => {
  void shutDown().then(() => process.exit());
};

/**
 * Registers what has to be stopped when the process is told to end (SIGINT, SIGTERM, SIGHUP).
 * Steps run in reverse order, so the web server registers after the database and stops before it.
 * The returned function takes the step off the list, for whoever has stopped it by themselves.
 */
export const atShutdown = (name: string, step: Step): (() => void) => {
  if (!listening) {
    listening = true;
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, onSignal);
  }
  const entry = { name, step };
  steps.push(entry);
  return () => {
    const index = steps.indexOf(entry);
    if (index >= 0) steps.splice(index, 1);
  };
};
