import { sampleLabel } from '../support/papers/sample-label';
import { alone } from './alone';
import { median, report } from './stopwatch';

const LABELS = 1000;
const ROUNDS = 5;
const AIM = 1.5;

/** Every label is of another lot, with a code of its own, so that each is laid out for itself. */
const labels = Array.from({ length: LABELS }, (_, index) => {
  const lot = `261124-${String(index).padStart(4, '0')}`;
  return {
    content: { ...sampleLabel, lotCode: lot, lotMark: `L${lot}` },
    symbols: [{ kind: 'qrcode', text: lot, caption: null }],
    copies: 1,
  };
});

interface Round {
  readonly printedMs: number;
  readonly bareMs: number;
}

/** One more than is counted: the first round warms both up. */
const printAlone = (): readonly Round[] => {
  const input = {
    labels,
    stock: { kind: 'roll', widthMm: 62, marginMm: 3 },
    head: {
      title: 'Box labels',
      language: 'en',
      author: 'Atelier Lunebleue',
      createdAt: '2026-11-25T13:05:00Z',
    },
    rounds: ROUNDS + 1,
  };
  return (alone('labels', input) as Round[]).slice(1);
};

it('prints 1,000 labels of 1,000 lots as one PDF', () => {
  const rounds = printAlone();
  const printedMs = median(rounds.map((round) => round.printedMs));
  const bareMs = median(rounds.map((round) => round.bareMs));
  report(
    `${String(LABELS)} labels: laid out and printed ${printedMs.toFixed(0)} ms, bare pdfkit with ` +
      `the same glyphs ${bareMs.toFixed(0)} ms, ratio ${(printedMs / bareMs).toFixed(2)} ` +
      `(aim: ${String(AIM)})`,
  );
  expect(rounds).toHaveLength(ROUNDS);
}, 600_000);
