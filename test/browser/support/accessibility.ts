import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

const SCRIPT = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
/** Rules of WCAG 2.0, 2.1 and 2.2 at levels A and AA. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly string[] }[];
}

/** What axe finds wrong on the page, one line each; empty when it is clean. */
export const accessibilityFaults = async (page: Page): Promise<string[]> => {
  await page.evaluate(SCRIPT);
  const found = await page.evaluate(async (rules) => {
    const axe = (
      globalThis as unknown as {
        axe: { run: (of: unknown, with_: unknown) => Promise<{ violations: Violation[] }> };
      }
    ).axe;
    return (await axe.run(document, { runOnly: rules, resultTypes: ['violations'] })).violations;
  }, RULES);
  return found.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
};
