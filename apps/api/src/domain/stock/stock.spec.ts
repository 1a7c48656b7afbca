import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { Decimal } from '../units';
import { checkUsable, type LotStanding, shareOf, take } from '.';

const d = (text: string | number): Decimal => new Decimal(text);
const butter = {
  code: '261125-0017',
  unit: 'g' as const,
  onHand: { quantity: d('1000'), massG: d('1000'), cost: d('10') },
};

describe('take', () => {
  it('gives a part its share of weight and cost', () => {
    const taken = take(butter, d('333.333'));
    expect(taken).toMatchObject({ ok: true });
    if (!taken.ok) return;
    expect(taken.value.massG.toFixed(3)).toBe('333.333');
    expect(taken.value.cost.toFixed(4)).toBe('3.3333');
  });

  it('says how much is left when more is asked for', () => {
    const refused = take(butter, d('1000.001'));
    expect(refused).toMatchObject({
      ok: false,
      refusal: {
        code: 'not-enough-on-hand',
        facts: { lotCode: '261125-0017', onHand: '1000', asked: '1000.001', unit: 'g' },
      },
    });
  });

  it('refuses half a piece, nothing and less than nothing', () => {
    const pods = { ...butter, unit: 'pc' as const };
    expect(take(pods, d('0.5'))).toMatchObject({ refusal: { code: 'pieces-not-whole' } });
    expect(take(pods, d(0))).toMatchObject({ refusal: { code: 'quantity-not-positive' } });
    expect(take(pods, d(-1))).toMatchObject({ refusal: { code: 'quantity-not-positive' } });
  });

  it('leaves neither weight nor cost when a lot is taken in any number of parts', () => {
    const parts = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(parts, fc.nat(10 ** 8), fc.nat(10 ** 8), (counts, milligrams, money) => {
        const total = counts.reduce((sum, count) => sum + count, 0);
        let left = {
          quantity: d(total),
          massG: d(milligrams).div(1000),
          cost: d(money).div(10000),
        };
        for (const count of counts) {
          const taken = shareOf(left, d(count));
          left = {
            quantity: left.quantity.minus(taken.quantity),
            massG: left.massG.minus(taken.massG),
            cost: left.cost.minus(taken.cost),
          };
          expect(left.massG.isNegative() || left.cost.isNegative()).toBe(false);
        }
        expect([left.quantity, left.massG, left.cost].map(Number)).toEqual([0, 0, 0]);
      }),
    );
  });
});

describe('checkUsable', () => {
  const today = Temporal.PlainDate.from('2026-11-25');
  const cream: LotStanding = {
    code: '261120-0038',
    itemName: 'Cream 35 %',
    itemKind: 'ingredient',
    refused: false,
    useBy: today,
    specified: true,
    holds: [],
  };

  it('lets a lot be used on its last day', () => {
    expect(checkUsable(cream, today)).toMatchObject({ ok: true });
  });

  it('refuses it on the day after, naming the lot and the date', () => {
    const refused = checkUsable(cream, today.add({ days: 1 }));
    expect(refused).toMatchObject({
      refusal: { code: 'lot-expired', facts: { lotCode: '261120-0038', useBy: '2026-11-25' } },
    });
  });

  it.each([
    ['lot-refused', { refused: true }],
    ['lot-unspecified', { specified: false }],
    ['lot-held', { holds: ['cream came in at 11 °C'] }],
  ])('refuses with %s', (code, change) => {
    const refused = checkUsable({ ...cream, ...change }, today);
    expect(refused).toMatchObject({ ok: false, refusal: { code } });
  });

  it('asks no specification of what the workshop made or packs in', () => {
    const made = { ...cream, itemKind: 'filling' as const, specified: false };
    expect(checkUsable(made, today)).toMatchObject({ ok: true });
  });
});
