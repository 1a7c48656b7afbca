import type { RecallView } from '@api/modules/recalls';
import { Books } from '../../support/books/books';
import { smallShop } from '../../support/books/small-shop';
import { askPdf } from '../../support/papers/ask-pdf';
import { allText, readPdf, type ReadPdf } from '../../support/papers/read-pdf';
import { startTestService, type TestService } from '../../support/service/test-service';

describe('the papers of a recall', () => {
  let service: TestService;
  let books: Books;
  let code: string;

  const post = async (path: string, body: object = {}): Promise<RecallView> =>
    (await service.as.maker.post(`/recalls/${code}${path}`, body).expect(200)).body as RecallView;
  const paper = async (path: string, name: string, dpis: number[] = []): Promise<ReadPdf> =>
    readPdf(await askPdf(service.as.auditor.get(`/recalls/${code}/${path}`)), name, dpis);

  const release = async (): Promise<void> => {
    await books.query(
      `UPDATE hold SET released_at = now(), released_by_id = placed_by_id,
      release_reason = 'a test' WHERE lot_id = $1 AND released_at IS NULL`,
      [books.id('B1')],
    );
  };

  beforeAll(async () => {
    service = await startTestService();
    books = await Books.open(service.databaseUrl);
    await smallShop(books);
    await books.customer('Grocer');
    await books.query(
      `UPDATE customer SET phone = '+00 7 70 70', address_lines = '{"1 Quay","1000 Harbour"}'
       WHERE name = 'Hotel'`,
    );
    const opened = await service.as.maker
      .post('/recalls', {
        mode: 'real',
        reason: 'metal in the cream',
        starts: [{ kind: 'lot', text: 'CR1' }],
      })
      .expect(201);
    ({ code } = opened.body as RecallView);
    await post('/holds');
    await post('/freeze', { excluded: [{ lot: 'P1', reason: 'x-rayed, all of it' }] });
    await release();
    await books.sent('D9', 'Grocer', '2026-03-12', { B1: ['1', '144'] });
    await post('/notes', {
      kind: 'customer_told',
      customerId: books.id('Hotel'),
      text: 'by phone',
    });
    await post('/recoveries', {
      lines: [{ lot: 'B1', customerId: books.id('Hotel'), quantity: '5', outcome: 'returned' }],
    });
  });

  afterAll(async () => {
    await books.close();
    await service.close();
  });

  it('are a list with contacts, quantities, what is here, and what came later', async () => {
    const read = await paper('list.pdf', 'case-list', [203]);
    const text = allText(read);
    for (const words of [
      'Recall list',
      'metal in the cream',
      'Hotel 1 Quay 1000 Harbour +00 7 70 70',
      'Caution: This list holds what was booked',
      'Learned since',
      'B1 here 2 → 6, sent 6 → 7',
      'box B1 6 pcs yes',
      'B1 · learned later',
      'Grocer',
      'D9',
      'Sold over the counter',
    ]) {
      expect(text).toContain(words);
    }
    expect(read.symbols.map((symbol) => symbol.text)).toEqual([code]);
  });

  it('are a letter for each customer, the one learned of later too', async () => {
    const read = await paper('letters.pdf', 'case-letters');
    expect(read.pages).toHaveLength(2);
    const texts = read.pages.map((page) => page.text.replaceAll(/\s+/g, ' '));
    expect(texts[0]).toContain('Grocer');
    expect(texts[1]).toContain('Hotel');
    expect(texts[1]).not.toContain('Grocer');
    for (const text of texts) {
      expect(text).toContain('Caution: We list what our records show');
      expect(text).toContain('B1');
    }
    const french = allText(await paper('letters.pdf?language=fr', 'case-letters-fr'));
    expect(french).toContain('cesser la vente immédiatement');
  });

  it('are a notice of what buyers can hold in their hands, in words that a person may set', async () => {
    const advice = encodeURIComponent('Bring it back to the shop.');
    const text = allText(
      await paper(`notice.pdf?page=LETTER&advice=${advice}&reason=Metal%20inside.`, 'case-notice'),
    );
    expect(text).toContain('LB1');
    expect(text).toContain('Bring it back to the shop.');
    expect(text).toContain('Metal inside.');
    expect(text).toContain('Caution: Not sure whether yours is one of these?');
    // Neither the ganache nor the cream is sold to anyone, and the pieces were taken out.
    for (const lot of ['LG1', 'LCR1', 'LP1']) expect(text).not.toContain(lot);
  });

  it('are a report that says it is not the last while the case is open', async () => {
    const text = allText(await paper('report.pdf', 'case-report-open'));
    expect(text).toContain('This case is still open');
    expect(text).toContain('Closed not yet');
  });

  it('are a report at the close whose figures later bookings never change', async () => {
    await post('/close', { conclusion: 'A worn sieve was replaced.' });
    const read = await paper('report.pdf', 'case-report', [203]);
    const text = allText(read);
    for (const words of [
      'Recall report',
      'A worn sieve was replaced.',
      'Opened from lot CR1',
      'Had been distributed 1,296 g',
      'Recovered 720 g · 55.6 %',
      'Nothing came back from the counter, Grocer',
      'Hotel 6 0 864 g 720 g yes',
      'Grocer 1 0 144 g 0 g NO',
      'P1 x-rayed, all of it',
      'B1 here 2 → 6, sent 6 → 7',
      'customer told Hotel: by phone',
      'goods recovered B1 · 5 · returned · Hotel',
      'case closed',
      'Caution: This list holds what was booked',
    ]) {
      expect(text).toContain(words);
    }
    expect(read.symbols.map((symbol) => symbol.text)).toEqual([code]);
    await release();
    await books.sent('D10', 'Grocer', '2026-03-13', { B1: ['1', '144'] });
    expect(allText(await paper('report.pdf', 'case-report-again'))).toContain('1,296 g');
    const french = allText(await paper('report.pdf?language=fr', 'case-report-fr'));
    expect(french).toContain('Rapport de rappel');
    expect(french).toContain('Récupéré');
  });

  it('are found for no case that is not there', async () => {
    for (const name of ['list', 'letters', 'notice', 'report']) {
      await service.as.auditor.get(`/recalls/none/${name}.pdf`).expect(404);
    }
  });
});
