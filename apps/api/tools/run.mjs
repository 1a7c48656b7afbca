import { spawn } from 'node:child_process';
import Module from 'node:module';
import { ROOT } from './places.mjs';

/** Runs a program to its end with our own console; throws when it fails. */
export const run = (command, args, { cwd = ROOT, env = {}, shell = false } = {}) =>
  new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd,
      shell,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'inherit', 'inherit'],
    });
    child.on('error', reject);
    child.on('exit', (code, signal) =>
      code === 0
        ? resolve()
        : reject(new Error(`${command} ${args.join(' ')} ended with ${code ?? signal}`)),
    );
  });

/** Runs a script of an installed package, or one of our own, with this Node. */
export const runNode = (script, args = [], options = {}) =>
  run(process.execPath, [script, ...args], options);

/**
 * Goes on as `node <script> <args>` inside this very process, so that signals, exit code and a
 * `kill -9` reach the script itself and no second process is left to look after.
 */
export const become = (script, args) => {
  // Reading every map takes a second and more: only for whoever is looking for a fault.
  if (process.env.DEBUG) process.setSourceMapsEnabled(true);
  process.argv = [process.execPath, script, ...args];
  Module.runMain();
};

/** Ends with one plain line for whoever sits at the console; `DEBUG=1` shows the stack. */
export const failPlainly = (error) => {
  console.error(process.env.DEBUG ? error : (error?.message ?? error));
  process.exit(1);
};
