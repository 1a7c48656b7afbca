import { heelLinks, tankScope, type TankEvent } from '.';

const charge = (at: string, added: string, tankLot: string): TankEvent => ({
  kind: 'charged',
  at,
  addedLots: [added],
  tankLot,
});

const events: TankEvent[] = [
  charge('2026-03-01T08:00:00Z', 'sack 1', 'T1'),
  { kind: 'emptied', at: '2026-03-02T18:00:00Z', clean: true },
  charge('2026-03-03T08:00:00Z', 'sack 2', 'T2'),
  { kind: 'emptied', at: '2026-03-04T18:00:00Z', clean: false },
  charge('2026-03-05T08:00:00Z', 'sack 3', 'T3'),
  charge('2026-03-06T08:00:00Z', 'sack 4', 'T4'),
];

describe('tankScope', () => {
  it('goes back to the last emptying that is recorded clean', () => {
    const scope = tankScope(events, '2026-03-05T12:00:00Z', '2026-03-05T13:00:00Z');
    expect(scope.addedLots).toEqual(['sack 2', 'sack 3']);
    expect(scope.tankLots).toEqual(['T3']);
    expect(scope.since).toBe('2026-03-03T08:00:00Z');
  });

  it('takes in both chains when the window spans a clean emptying', () => {
    const scope = tankScope(events, '2026-03-02T00:00:00Z', '2026-03-03T09:00:00Z');
    expect(scope.addedLots).toEqual(['sack 1', 'sack 2']);
    expect(scope.tankLots).toEqual(['T1', 'T2']);
  });

  it('takes in the moment of a charge itself on both sides', () => {
    const scope = tankScope(events, '2026-03-05T08:00:00Z', '2026-03-05T08:00:00Z');
    expect(scope.tankLots).toEqual(['T2', 'T3']);
  });

  it('is empty before the first charge', () => {
    const scope = tankScope(events, '2026-02-01T00:00:00Z', '2026-02-02T00:00:00Z');
    expect(scope).toEqual({ tankLots: [], addedLots: [] });
  });
});

describe('heelLinks', () => {
  it('links over an emptying that was not recorded clean and stops at one that was', () => {
    expect(heelLinks(events)).toEqual([
      { from: 'T2', to: 'T3' },
      { from: 'T3', to: 'T4' },
    ]);
  });
});
