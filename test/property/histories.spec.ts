import { verifyDatabase } from '@api/platform/verify';
import { audit } from '../support/histories/audit';
import { Chance } from '../support/histories/chance';
import { History } from '../support/histories/history';
import { Hand } from '../support/histories/http';
import { addShopItems, type ShopItems } from '../support/histories/shop-items';
import { startTestService, type TestService } from '../support/service/test-service';

/** How many histories: 1,000 unless HISTORIES says otherwise; HISTORY_SEED repeats one. */
const HISTORIES = Number(process.env['HISTORIES'] ?? 1000);
const FIRST_SEED = Number(process.env['HISTORY_SEED'] ?? 1);
const STEPS = 10;
/** Histories in one database at the same time: they share nothing but its tables. */
const AT_ONCE = 2;

describe('random histories over HTTP against the auditor', () => {
  let service: TestService;
  let items: ShopItems;
  let hands: Hand[];
  let auditor: Hand;

  beforeAll(async () => {
    service = await startTestService();
    items = await addShopItems(service);
    hands = await Promise.all(
      ['The owner', 'The maker', 'The maker'].map((name) => Hand.of(service.origin, name)),
    );
    auditor = await Hand.of(service.origin, 'The auditor');
  });

  afterAll(() => service.close());

  const one = async (seed: number): Promise<void> => {
    try {
      const history = new History(hands, items, new Chance(seed));
      await history.live(STEPS);
      await audit(auditor, history.books);
    } catch (error) {
      const again = `HISTORY_SEED=${String(seed)} HISTORIES=1`;
      throw new Error(`history ${String(seed)} (${again})`, { cause: error });
    }
  };

  it(
    `agree on stock, reach, provenance and balance in ${String(HISTORIES)} histories`,
    async () => {
      let next = FIRST_SEED;
      const runner = async (): Promise<void> => {
        while (next < FIRST_SEED + HISTORIES) {
          const seed = next;
          next += 1;
          await one(seed);
        }
      };
      await Promise.all(Array.from({ length: AT_ONCE }, runner));
    },
    HISTORIES * 20_000,
  );

  it('leave a database in which verify finds no fault', async () => {
    expect(await verifyDatabase(service.databaseUrl)).toEqual([]);
  });
});
