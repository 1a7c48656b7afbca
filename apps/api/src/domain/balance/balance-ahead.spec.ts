import { lotGraph } from '../provenance';
import { Decimal, sum } from '../units';
import { balanceAhead, type BatchAccount, type LotAccount } from '.';

const g = (value: number | string) => new Decimal(value);
const draw = (lot: string, mass: number) => ({ lot, massG: g(mass), quantity: g(mass) });
const lot = (
  name: string,
  massG: number,
  ends: LotAccount['ends'] = [],
  gains: LotAccount['gains'] = [],
): LotAccount => ({
  lot: name,
  origin: name.startsWith('R') ? 'received' : 'made',
  massG: g(massG),
  ends,
  gains,
});

const balanceOf = (roots: string[], lots: LotAccount[], batches: BatchAccount[]) => {
  const graph = lotGraph(batches);
  if (!graph.ok) throw new Error(graph.refusal.detail);
  return balanceAhead(graph.value, roots, lots, batches);
};

const lines = (balance: ReturnType<typeof balanceOf>) =>
  Object.fromEntries(
    balance.ends.map((line) => [[line.kind, line.note].join(' ').trim(), line.massG.toFixed(3)]),
  );

const cook: BatchAccount = {
  id: 'cook',
  open: false,
  draws: [draw('R1', 300), draw('R2', 700)],
  losses: [
    { kind: 'steam', massG: g(40), volatile: true },
    { kind: 'held back', massG: g(50), lot: 'R1' },
  ],
  outputs: [{ lot: 'M', massG: g(910) }],
};

describe('balanceAhead', () => {
  const lots = [
    lot('R1', 1000, [
      { kind: 'on-hand', massG: g(650) },
      { kind: 'wasted', massG: g(50) },
    ]),
    lot('R2', 700),
    lot('M', 910, [
      { kind: 'dispatched', massG: g(500) },
      { kind: 'counter', massG: g(110) },
    ]),
  ];
  const open: BatchAccount = {
    id: 'open',
    open: true,
    draws: [draw('M', 300)],
    losses: [],
    outputs: [],
  };

  it('follows a delivery to every end, losses and open batch included', () => {
    const balance = balanceOf(['R1'], lots, [cook, open]);
    // 250 of 950 g of the mix are R1: 10/38 of each gram of M and of the steam.
    expect(lines(balance)).toEqual({
      'on-hand': '650.000',
      wasted: '50.000',
      'loss held back': '50.000',
      'loss steam': '10.526',
      dispatched: '131.579',
      counter: '28.948',
      'open-batch open': '78.947',
    });
    expect(sum(balance.ends.map((line) => line.massG)).toFixed(3)).toBe('1000.000');
    expect(balance.state).toBe('balanced');
  });

  it('counts once what went from one asked lot into another', () => {
    const balance = balanceOf(['R1', 'M'], lots, [cook, open]);
    expect(balance.sourceG.toFixed(3)).toBe('1910.000');
    expect(lines(balance)['inside-asked-lot M']).toBe('239.474');
    expect(balance.unexplainedG.toFixed(3)).toBe('0.000');
  });

  it('names a count that found less, a return, and a batch that gave more than went in', () => {
    const heavy: BatchAccount = { ...cook, losses: [], outputs: [{ lot: 'M', massG: g(1010) }] };
    const balance = balanceOf(
      ['R1'],
      [
        lot('R1', 1000, [
          { kind: 'on-hand', massG: g(650) },
          { kind: 'count-shortage', massG: g(50) },
        ]),
        lot(
          'M',
          1010,
          [
            { kind: 'dispatched', massG: g(1010) },
            { kind: 'wasted', massG: g(10) },
          ],
          [{ kind: 'returned-by-customer', massG: g(10) }],
        ),
      ],
      [heavy],
    );
    expect(balance.state).toBe('difference-named');
    expect(balance.named.map((line) => [line.kind, line.massG.toFixed(3)])).toEqual([
      ['gain', '3.000'],
      ['count-shortage', '50.000'],
    ]);
    expect(balance.unexplainedG.toFixed(3)).toBe('0.000');
  });

  it('names the lot whose entries leave something open', () => {
    const balance = balanceOf(['R2'], [lot('R2', 700, [{ kind: 'on-hand', massG: g(650) }])], []);
    expect(lines(balance)).toEqual({ 'on-hand': '650.000', 'shortfall R2': '50.000' });
    expect(balance.state).toBe('difference-named');
  });

  it('names a lot that gave out more than it held, as an error', () => {
    const balance = balanceOf(['R2'], [lot('R2', 700, [{ kind: 'on-hand', massG: g(721) }])], []);
    expect(balance.state).toBe('more-out-than-in');
    expect(balance.overdrawn).toEqual(['R2']);
    expect(balance.accountedPercent.toFixed(1)).toBe('103.0');
  });
});
