import { Decimal } from '../units';
import { missingOf, type PartOfMaking, shareOut } from './share-out';

const part = (
  planned: number | null,
  state: PartOfMaking['state'] = 'open',
  made = 0,
): PartOfMaking => ({
  state,
  planned: planned === null ? null : new Decimal(planned),
  made: new Decimal(made),
});
const kept = (parts: readonly [PartOfMaking, ...PartOfMaking[]], share: number) => {
  const own = parts[0].planned ?? new Decimal(0);
  const making = { batchCode: 'K1', unit: 'g' as const, whole: new Decimal(1000), own, parts };
  const shared = shareOut(making, new Decimal(share));
  return shared.ok ? shared.value.toNumber() : shared.refusal.code;
};

describe('a making that is shared out', () => {
  it('gives a part what the head keeps less', () => {
    expect(kept([part(1000)], 400)).toBe(600);
    expect(kept([part(600), part(400)], 250)).toBe(350);
  });

  it('gives the share of an abandoned part away again, before it takes from the head', () => {
    expect(kept([part(600), part(400, 'abandoned')], 400)).toBe(600);
    expect(kept([part(600), part(400, 'abandoned')], 450)).toBe(550);
  });

  it('leaves the head with something to make', () => {
    expect(kept([part(1000)], 1000)).toBe('part-too-large');
    expect(kept([part(600), part(400)], 600)).toBe('part-too-large');
    expect(kept([part(600), part(400)], 599.999)).toBe(0.001);
  });

  it('misses what a finished part gave less than planned, and never less than nothing', () => {
    const whole = new Decimal(1000);
    const missing = (...parts: PartOfMaking[]) => missingOf(whole, parts).toNumber();
    expect(missing(part(600), part(400))).toBe(0);
    expect(missing(part(600), part(400, 'finished', 380))).toBe(20);
    expect(missing(part(600, 'finished', 650), part(400))).toBe(0);
    expect(missing(part(null), part(400, 'abandoned'))).toBe(1000);
  });
});
