import { massBalance, type EndKind, type Portion, type SourceKind } from '@api/domain/balance';
import { Decimal } from '@api/domain/units';

// The identity an auditor asks for (received = used + waste + samples + returned + in stock) and
// its recovery per cent: common practice, no source; the cases are worked by hand.

const kg = (value: string) => new Decimal(value).times(1000);

const account = (used: string, stock: string) =>
  massBalance(
    [{ kind: 'received', massG: kg('25.000') } satisfies Portion<SourceKind>],
    [
      { kind: 'used', massG: kg(used) },
      { kind: 'wasted', massG: kg('0.300') },
      { kind: 'sampled', massG: kg('0.050') },
      { kind: 'on-hand', massG: kg(stock) },
    ] satisfies Portion<EndKind>[],
    new Decimal('50'),
  );

describe('a delivery of 25.000 kg', () => {
  it('balances at 100.0 % when 18.250 is used, 0.300 wasted, 0.050 sampled, 6.400 in stock', () => {
    const balance = account('18.250', '6.400');
    expect(balance.accountedPercent.toFixed(1)).toBe('100.0');
    expect(balance.unexplainedG.toFixed(3)).toBe('0.000');
    expect(balance.state).toBe('balanced');
  });

  it('misses 0.250 kg at 99.0 % when 6.150 is in stock', () => {
    const balance = account('18.250', '6.150');
    expect(balance.accountedPercent.toFixed(1)).toBe('99.0');
    expect(balance.unexplainedG.toFixed(3)).toBe('250.000');
    expect(balance.state).toBe('difference-unexplained');
  });

  it('is an error at 103.0 % when 19.000 is used: more out than in', () => {
    const balance = account('19.000', '6.400');
    expect(balance.accountedPercent.toFixed(1)).toBe('103.0');
    expect(balance.unexplainedG.toFixed(3)).toBe('-750.000');
    expect(balance.state).toBe('more-out-than-in');
  });
});
