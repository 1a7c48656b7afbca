import type { ForecastView } from '@api/modules/planning/planning-settings.dto';
import { Books } from '../../support/books/books';
import { smallShop } from '../../support/books/small-shop';
import { startTestService, type TestService } from '../../support/service/test-service';

let service: TestService;
let books: Books;
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-03-20T08:00:00Z'));
  books = await Books.open(service.databaseUrl);
  await smallShop(books);
}, 120_000);
afterAll(async () => {
  await books.close();
  await service.close();
});

// The books say that the counter sold two boxes and twenty pieces on one day, and a hotel six boxes.
it('forecasts from what the counter sold, not from what customers were sent', async () => {
  const forecast = async (name: string): Promise<ForecastView> =>
    (await service.as.auditor.get(`/items/${books.id(name)}/forecast?days=7`).expect(200))
      .body as ForecastView;
  expect(await forecast('box')).toMatchObject({ observedDays: 1, level: '2.00', thin: true });
  expect(await forecast('bonbon')).toMatchObject({ observedDays: 1, level: '20.00' });
});

it('values what is on hand, and shows what was reserved of it', async () => {
  const answer = await service.as.auditor.get('/stock?kind=box&slowAfterDays=5').expect(200);
  const { lots } = answer.body as { lots: Record<string, unknown>[] };
  expect(lots).toMatchObject([
    { lotCode: 'B1', quantity: '2.000', reservedQuantity: '0.000', slow: true },
  ]);
});
