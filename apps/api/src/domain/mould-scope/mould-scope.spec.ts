import { mouldScope, type MouldInspection } from '.';

const inspections: MouldInspection[] = [
  { at: '2026-01-05T08:00:00Z', verdict: 'sound' },
  { at: '2026-02-02T08:00:00Z', verdict: 'chipped' },
  { at: '2026-02-09T08:00:00Z', verdict: 'sound' },
];
const uses = ['2026-01-02', '2026-01-05', '2026-01-20', '2026-02-03', '2026-02-20'].map((day) => ({
  at: `${day}T08:00:00Z`,
  batch: day,
}));

describe('mouldScope', () => {
  it('takes uses from the last sound inspection to the next', () => {
    const scope = mouldScope(inspections, uses, '2026-02-02T08:00:00Z');
    expect(scope.uses.map((use) => use.batch)).toEqual(['2026-01-05', '2026-01-20', '2026-02-03']);
    expect(scope.soundAt).toBe('2026-01-05T08:00:00Z');
    expect(scope.soundAgainAt).toBe('2026-02-09T08:00:00Z');
  });

  it('takes every use when the mould was never found sound', () => {
    const chipped = inspections.slice(1, 2);
    expect(mouldScope(chipped, uses, '2026-02-02T08:00:00Z').uses).toHaveLength(5);
  });

  it('lets a sound inspection in the same instant clear nothing', () => {
    const scope = mouldScope(inspections, uses, '2026-01-05T08:00:00Z');
    expect(scope.uses.map((use) => use.batch)).toContain('2026-01-02');
  });
});
