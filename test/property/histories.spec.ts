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

describe('random histories over HTTP against the auditor', () => {
  let service: TestService;
  let items: ShopItems;
  let hands: Hand[];
  let auditor: Hand;

  beforeAll(async () => {
    service = await startTestService();
    items = await addShopItems(service);
    hands = await Promise.all(
      ['The owner', 'The maker', 'The maker'].map((name) => Hand.of(service, name)),
    );
    auditor = await Hand.of(service, 'The auditor');
  });

  afterAll(() => service.close());

  it(
    `agree on stock, reach, provenance and balance in ${String(HISTORIES)} histories`,
    async () => {
      for (let seed = FIRST_SEED; seed < FIRST_SEED + HISTORIES; seed += 1) {
        try {
          const history = new History(hands, items, new Chance(seed));
          await history.live(STEPS);
          await audit(auditor, history.books);
        } catch (error) {
          throw new Error(`history ${String(seed)} (HISTORY_SEED=${String(seed)} HISTORIES=1)`, {
            cause: error,
          });
        }
      }
    },
    HISTORIES * 20_000,
  );

  it('leave a database in which verify finds no fault', async () => {
    expect(await verifyDatabase(service.databaseUrl)).toEqual([]);
  });
});
