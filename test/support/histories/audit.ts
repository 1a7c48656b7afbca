import { Fraction } from 'fraction.js';
import type { BalanceView, ProvenanceView } from '@api/modules/tracing/provenance.dto';
import type { TraceView } from '@api/modules/tracing/trace.dto';
import { contentsOf, type Rational, reachOf, toMilligramText } from '../auditor/rationals';
import { type AuditorsBooks, grams } from './books-of-auditor';
import type { Hand } from './http';

const sumText = (texts: readonly string[]): string =>
  toMilligramText(texts.reduce((sum, text) => sum.add(text), new Fraction(0)));

/** Stock, reach, grams of the lot in each lot ahead. */
const auditForward = async (
  hand: Hand,
  books: AuditorsBooks,
  root: string,
  contents: (lot: string) => ReadonlyMap<string, Rational>,
): Promise<void> => {
  const batches = books.batches();
  const view = await hand.must<TraceView>(hand.get(`/lots/${root}/trace?direction=forward`));
  expect(new Set(view.lots.map((lot) => lot.code))).toEqual(reachOf(batches, [root]));
  for (const lot of view.lots) {
    const known = books.lot(lot.code);
    expect(lot.onHandMassGrams).toBe(grams(known.onHandMg));
    expect(lot.onHandQuantity).toBe(
      known.pieces ? `${String(known.onHandQuantity)}.000` : grams(known.onHandQuantity),
    );
    const share = contents(lot.code).get(root) ?? new Fraction(0);
    const exact = share.mul(new Fraction(known.madeMg).div(1000));
    expect(lot.sharedMassGrams).toBe(toMilligramText(exact));
  }
};

/** Grams of every lot behind, of what is inside and of what went in; parts that sum to the lot. */
const auditBack = async (hand: Hand, books: AuditorsBooks, code: string): Promise<void> => {
  const batches = books.batches();
  const view = await hand.must<ProvenanceView>(hand.get(`/lots/${code}/provenance`));
  const inside = contentsOf(batches, code);
  const wentIn = contentsOf(batches, code, true);
  inside.delete(code);
  expect(new Set(view.contributions.map((row) => row.lot))).toEqual(new Set(inside.keys()));
  const whole = new Fraction(books.lot(code).madeMg).div(1000);
  for (const row of view.contributions) {
    const mass = (inside.get(row.lot) ?? new Fraction(0)).mul(whole);
    const ingoing = (wentIn.get(row.lot) ?? new Fraction(0)).mul(whole);
    expect(row.massGrams).toBe(toMilligramText(mass));
    expect(row.ingoingGrams).toBe(toMilligramText(ingoing));
  }
  const printed = view.contributions.flatMap((row) => row.printedGrams ?? []);
  if (printed.length > 0) expect(sumText(printed)).toBe(toMilligramText(whole));
};

/** Each line within a milligram of the exact figure, and all of them to the milligram. */
const auditBalance = async (hand: Hand, books: AuditorsBooks, root: string): Promise<void> => {
  const view = await hand.must<BalanceView>(hand.get(`/lots/${root}/balance`));
  const { sources, ends } = books.balance(root);
  expect(view.unexplainedQuantity).toBe('0.000');
  expect(['balanced', 'difference-named']).toContain(view.state);
  expect(view.sourceQuantity).toBe(toMilligramText(sources));
  expect(sumText(view.ends.map((line) => line.quantity))).toBe(view.sourceQuantity);
  for (const line of view.ends) {
    const name = [line.kind, line.note].filter(Boolean).join(' ');
    const exact = ends.get(name);
    if (!exact) throw new Error(`the auditor knows no end "${name}"`);
    expect(exact.sub(line.quantity).abs().compare(new Fraction(1, 1000))).toBeLessThanOrEqual(0);
    ends.delete(name);
  }
  for (const exact of ends.values()) expect(exact.compare(new Fraction(1, 1000))).toBeLessThan(1);
};

/** Asks the service what the auditor has worked out, and lets nothing differ. */
export const audit = async (hand: Hand, books: AuditorsBooks): Promise<void> => {
  const lots = [...books.lots.values()];
  const received = lots.filter((lot) => lot.received);
  const batches = books.batches();
  const known = new Map<string, ReadonlyMap<string, Rational>>();
  const contents = (lot: string): ReadonlyMap<string, Rational> => {
    const found = known.get(lot) ?? contentsOf(batches, lot);
    known.set(lot, found);
    return found;
  };
  const made = lots.filter((one) => !one.received).slice(-2);
  await Promise.all([
    ...received.map((lot) => auditForward(hand, books, lot.code, contents)),
    ...made.map((lot) => auditBack(hand, books, lot.code)),
    ...received.slice(0, 1).map((lot) => auditBalance(hand, books, lot.code)),
  ]);
};
