import type { Books } from './books';

export const day = (number: number) => `2026-03-${String(number).padStart(2, '0')}T08:00:00Z`;

/**
 * A small workshop's ten days: two creams and three chocolates, a tank charged three times (once
 * over a heel of nothing, once after it was recorded clean), a ganache with strained-out tea,
 * pieces cast in a mould that was later found chipped, boxes, a customer and the counter.
 */
export const smallShop = async (books: Books): Promise<void> => {
  await books.supplier('Dairy');
  await books.supplier('Cocoa house');
  await books.customer('Hotel');
  await books.place('Cold store');
  await books.item('cream');
  await books.item('chocolate');
  await books.item('tea');
  await books.item('carton', 'packaging', 'pc');
  await books.item('ganache', 'filling');
  await books.item('bonbon', 'piece');
  await books.item('box', 'box');
  await books.tank('Tank 1', 'chocolate');
  await books.mould('M1');
  await books.received('CR1', 'cream', '1000', 'Dairy', day(1), 'Cold store');
  await books.received('CR2', 'cream', '1000', 'Dairy', day(1));
  await books.received('CH1', 'chocolate', '5000', 'Cocoa house', day(1));
  await books.received('CH2', 'chocolate', '5000', 'Cocoa house', day(2));
  await books.received('CH3', 'chocolate', '5000', 'Cocoa house', day(2));
  await books.received('TEA', 'tea', '100', 'Dairy', day(1));
  await books.received('CT1', 'carton', '50', 'Cocoa house', day(1));
  await books.made({
    code: 'C1',
    kind: 'charge',
    tank: 'Tank 1',
    at: day(3),
    draws: [['CH1', '5000']],
    outputs: [{ code: 'T1', item: 'chocolate', grams: '5000' }],
  });
  await books.made({
    code: 'K1',
    at: day(4),
    draws: [
      ['CR1', '600'],
      ['TEA', '20'],
      ['T1', '1000'],
      ['CR2', '10'],
    ],
    losses: [
      { kind: 'held_back', grams: '20', lot: 'TEA' },
      { kind: 'steam', grams: '80' },
    ],
    outputs: [{ code: 'G1', item: 'ganache', grams: '1530' }],
  });
  await books.made({
    code: 'S1',
    kind: 'cast',
    at: day(5),
    draws: [
      ['G1', '1000'],
      ['T1', '2000'],
    ],
    losses: [{ kind: 'rejects', grams: '120' }],
    outputs: [{ code: 'P1', item: 'bonbon', quantity: '240', grams: '2880' }],
  });
  await books.cast('S1', 'M1', day(5));
  // The tank's lot is used up to the last gram; nobody recorded an empty and clean tank.
  await books.moved('T1', 'wasted', '-2000', '-2000');
  await books.made({
    code: 'C2',
    kind: 'charge',
    tank: 'Tank 1',
    at: day(6),
    draws: [['CH2', '5000']],
    outputs: [{ code: 'T2', item: 'chocolate', grams: '5000' }],
  });
  await books.emptied('Tank 1', day(7), true);
  await books.made({
    code: 'C3',
    kind: 'charge',
    tank: 'Tank 1',
    at: day(8),
    draws: [['CH3', '5000']],
    outputs: [{ code: 'T3', item: 'chocolate', grams: '5000' }],
  });
  await books.made({
    code: 'X1',
    kind: 'pack',
    at: day(9),
    draws: [
      ['P1', '120', '1440'],
      ['CT1', '10', '0'],
    ],
    outputs: [{ code: 'B1', item: 'box', quantity: '10', grams: '1440' }],
  });
  await books.sent('D1', 'Hotel', '2026-03-10', { B1: ['6', '864'] });
  await books.sent('D2', null, '2026-03-11', { B1: ['2', '288'], P1: ['20', '240'] });
  await books.made({
    code: 'K2',
    at: day(12),
    draws: [['G1', '100']],
    outputs: [{ code: 'never', item: 'ganache', grams: '1' }],
    open: true,
  });
  await books.moved('P1', 'sampled', '-4', '-48');
  await books.moved('G1', 'counted', '-30', '-30');
  await books.inspected('M1', day(2), 'sound');
  await books.inspected('M1', day(12), 'chipped');
};
