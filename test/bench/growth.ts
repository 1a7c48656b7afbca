import { report } from './stopwatch';

/** One question at one size of the shop. */
interface Measured {
  readonly question: string;
  readonly draws: number;
  readonly rows: number;
  /** Milliseconds of the graph's query straight through the database's client. */
  readonly straight: number;
  /** Milliseconds of the whole answer over HTTP. */
  readonly served: number;
}

const measured: Measured[] = [];

const times = (now: number, before: number): string => `×${(now / before).toFixed(2)}`;

/** Prints a figure when it is there, and keeps it for the growth. */
export const keep = (figure: Measured): void => {
  measured.push(figure);
  const { question, draws, rows, straight, served } = figure;
  report(
    `${question}, ${draws.toLocaleString('en')} draws: ${String(rows)} rows; ` +
      `straight ${straight.toFixed(1)} ms, HTTP ${served.toFixed(1)} ms, ` +
      `ratio ${(served / straight).toFixed(2)}`,
  );
};

/** How each question grew from the smallest shop, beside how the bare query did. */
export const reportGrowth = (): void => {
  const questions = [...new Set(measured.map((figure) => figure.question))];
  for (const question of questions) {
    const [first, ...larger] = measured
      .filter((figure) => figure.question === question)
      .sort((a, b) => a.draws - b.draws);
    if (!first) continue;
    for (const figure of larger) {
      report(
        `growth of ${question}, from ${first.draws.toLocaleString('en')} to ` +
          `${figure.draws.toLocaleString('en')} draws (${times(figure.draws, first.draws)}): ` +
          `straight ${times(figure.straight, first.straight)}, ` +
          `HTTP ${times(figure.served, first.served)}`,
      );
    }
  }
};
