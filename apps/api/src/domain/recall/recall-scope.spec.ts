import { Decimal } from '../units';
import { changeSinceFrozen, effectiveness, type ScopeLot } from '.';

const d = (value: number) => new Decimal(value);
const row = (lot: string, onHand: number, dispatched: number): ScopeLot => ({
  lot,
  onHand: d(onHand),
  dispatched: d(dispatched),
  counter: d(0),
});

describe('changeSinceFrozen', () => {
  const frozen = { askedAt: '2026-03-01T09:00:00Z', lots: [row('A', 5, 10), row('B', 0, 3)] };

  it('is empty while nothing was learned', () => {
    expect(changeSinceFrozen(frozen, frozen.lots)).toEqual([]);
  });

  it('shows a late lot, a lot that dropped out, and quantities that moved', () => {
    expect(changeSinceFrozen(frozen, [row('A', 4, 11), row('C', 1, 0)])).toEqual([
      { lot: 'C', change: 'now-in-scope' },
      {
        lot: 'A',
        change: 'quantity',
        fields: [
          { field: 'onHand', was: d(5), is: d(4) },
          { field: 'dispatched', was: d(10), is: d(11) },
        ],
      },
      { lot: 'B', change: 'no-longer-in-scope' },
    ]);
  });
});

describe('effectiveness', () => {
  it('is recovered over distributed, and names who has sent nothing', () => {
    const result = effectiveness([
      { customer: 'hotel', distributed: d(40), recovered: d(30) },
      { customer: 'grocer', distributed: d(20), recovered: d(0) },
      { distributed: d(20), recovered: d(0) },
    ]);
    expect(result.recoveredPercent?.toString()).toBe('37.5');
    expect(result.outstanding.toString()).toBe('50');
    expect(result.notHeardFrom).toEqual(['grocer', 'counter']);
  });

  it('names a customer who sent back more than went out, and does not net it against others', () => {
    const result = effectiveness([
      { customer: 'hotel', distributed: d(10), recovered: d(12) },
      { customer: 'grocer', distributed: d(10), recovered: d(8) },
    ]);
    expect(result.overRecovered).toEqual(['hotel']);
    expect(result.outstanding.toString()).toBe('2');
  });

  it('has no per cent when nothing went out', () => {
    expect(effectiveness([])).not.toHaveProperty('recoveredPercent');
  });
});
