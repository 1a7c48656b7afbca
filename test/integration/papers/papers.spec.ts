import { askPdf } from '../../support/papers/ask-pdf';
import { allText, readPdf, type ReadPdf } from '../../support/papers/read-pdf';
import { startTestService, type TestService } from '../../support/service/test-service';
import { type BatchBody, BenchHands } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

let service: TestService;
let kitchen: Kitchen;
let cream: string;
let couverture: string;
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  kitchen = await openKitchen(service);
  cream = await kitchen.receive(kitchen.cream, '2000', {
    useBy: '2026-12-05',
    supplierLotCode: 'LV-8841',
  });
  couverture = await kitchen.receive(kitchen.couverture, '10000', { bestBefore: '2027-11-01' });
});
afterAll(() => service.close());

const paper = async (path: string, dpis: readonly number[] = []): Promise<ReadPdf> =>
  readPdf(
    await askPdf(service.as.auditor.get(path)),
    `http${path.split('?')[0]?.replaceAll(/[^a-z]+/g, '-') ?? ''}`,
    dpis,
  );

const codes = ({ symbols }: ReadPdf): string[] => symbols.map(({ text }) => text);

describe('papers over HTTP', () => {
  it('tag a lot with its date, its supplier’s lot and what is not known of it', async () => {
    const tag = await paper(`/lots/${cream}/tag.pdf`, [203]);
    const text = allText(tag);
    for (const words of [cream, 'USE BY 5 Dec 2026', 'LV-8841', 'ALLERGENS UNKNOWN']) {
      expect(text).toContain(words);
    }
    expect(codes(tag)).toEqual([cream]);
    expect(tag.pages[0]?.widthMm).toBeCloseTo(70, 1);
  });

  it('tag each accepted lot of a delivery on a sheet, from the first free place on', async () => {
    const delivery = await service.as.maker
      .post('/deliveries', {
        supplierId: kitchen.supplierId,
        lines: ['A-1', 'A-2'].map((supplierLotCode) => ({
          ...{ itemId: kitchen.cream, supplierLotCode, quantity: '500', price: '2.50' },
          useBy: '2026-12-08',
        })),
      })
      .expect(201);
    const { id, lines } = delivery.body as { id: string; lines: { lotCode: string }[] };
    const grid = 'stock=sheet&columns=2&rows=6&widthMm=99&heightMm=45&leftMm=6&topMm=8&startAt=2';
    const tags = await paper(`/deliveries/${id}/tags.pdf?${grid}`, [203]);
    expect(tags.pages).toHaveLength(1);
    expect(codes(tags).sort()).toEqual(lines.map(({ lotCode }) => lotCode).sort());
  });

  it('say which stock cannot be, or is too small', async () => {
    const wide = await service.as.maker.get(`/lots/${cream}/tag.pdf?widthMm=900`);
    expect(wide.status).toBe(422);
    expect(wide.body).toMatchObject({ type: '/problems/stock-not-valid' });
    const small = await service.as.maker.get(`/lots/${cream}/tag.pdf?widthMm=30&heightMm=12`);
    expect(small.status).toBe(422);
    expect(small.body).toMatchObject({ type: '/problems/label-does-not-fit' });
    await service.as.maker.get('/lots/no-such-lot/tag.pdf').expect(404);
    await service.anonymous.get(`/lots/${cream}/tag.pdf`).expect(401);
  });

  it('tag moulds and places, all or by name', async () => {
    await service.as.maker.post('/moulds', { designId: kitchen.designId, count: 3 }).expect(201);
    const place = await service.as.maker
      .post('/places', { name: 'Cellar', kind: 'store', minTempC: '14', maxTempC: '18' })
      .expect(201);
    const { tag } = place.body as { tag: string };
    expect(codes(await paper('/moulds/tags.pdf', [203]))).toHaveLength(3);
    const tags = await paper(`/places/tags.pdf?tags=${tag}`, [203]);
    expect(codes(tags)).toEqual([tag]);
    expect(allText(tags)).toContain('14 – 18 °C');
    await service.as.maker.get('/places/tags.pdf?tags=P-0000').expect(404);
  });

  it('print a batch sheet whose codes scan back to the lots and the batch', async () => {
    const tea = await kitchen.receive(kitchen.tea, '500', {});
    const hands = new BenchHands(service);
    const batch = await hands.open(kitchen.ganache, { plannedQuantity: '2000' });
    const sheet = await paper(`/batches/${batch.id}/sheet.pdf`, [203]);
    const text = allText(sheet);
    for (const words of [
      'Batch sheet',
      batch.code,
      '960 g',
      '1,200 g',
      'Boil',
      '82 – 95 °C',
      'unknown',
    ]) {
      expect(text).toContain(words);
    }
    expect(codes(sheet)).toEqual(expect.arrayContaining([batch.code, cream, couverture, tea]));
    const again = await askPdf(service.as.auditor.get(`/batches/${batch.id}/sheet.pdf`));
    expect(
      again.equals(await askPdf(service.as.auditor.get(`/batches/${batch.id}/sheet.pdf`))),
    ).toBe(true);
  });

  it('say on a batch sheet which part of a making it is', async () => {
    const hands = new BenchHands(service);
    const head = await hands.open(kitchen.ganache, { plannedQuantity: '2000' });
    const sheet = async (language: string) =>
      allText(await paper(`/batches/${head.id}/sheet.pdf?language=${language}`));
    expect(await sheet('en')).not.toContain('Part of a making');
    await service.as.maker
      .post(`/batches/${head.id}/parts`, { plannedQuantity: '800' })
      .expect(201);
    expect(await sheet('en')).toContain('part 1 of 2');
    expect(await sheet('fr')).toContain('partie 1 sur 2');
  });

  it('print a delivery note, in French on US Letter when asked', async () => {
    const hands = new BenchHands(service);
    const ganache = await hands.make(
      kitchen.ganache,
      [
        { lotCode: cream, quantity: '480' },
        { lotCode: couverture, quantity: '600' },
      ],
      { outputs: [{ quantity: '1000' }], losses: [{ kind: 'steam', massGrams: '80' }] },
    );
    const customer = await service.as.seller
      .post('/customers', { name: 'Hôtel des Marées', addressLines: ['1 Seafront'] })
      .expect(201);
    const ganacheLot = ganache.outputs[0]?.lotCode ?? '';
    const trace = allText(await paper(`/lots/${cream}/trace.pdf`));
    for (const words of ['Trace report', ganacheLot, 'LV-8841', 'Mass balance', 'Caution']) {
      expect(trace).toContain(words);
    }
    const trays = await service.as.maker
      .post('/moulds', { designId: kitchen.designId, count: 1 })
      .expect(201);
    const mouldTag = (trays.body as { items: { tag: string }[] }).items[0]?.tag;
    const cast = await hands.open(kitchen.piece, { plannedTrays: 1 });
    await hands.draw(cast, { lotCode: couverture, quantity: '144' }).expect(201);
    await hands.draw(cast, { lotCode: ganacheLot, quantity: '120' }).expect(201);
    await service.as.maker
      .post(`/batches/${cast.id}/mould-uses`, { mouldTag, cavitiesFilled: 24 })
      .expect(201);
    const pieces = (await hands.finish(cast, { outputs: [{ quantity: '24' }] }).expect(200))
      .body as BatchBody;
    const lotCode = pieces.outputs[0]?.lotCode ?? '';
    const sent = await service.as.seller
      .post('/dispatches', {
        customerId: (customer.body as { id: string }).id,
        lines: [{ lotCode, quantity: '10' }],
      })
      .expect(201);
    const { id, code } = sent.body as { id: string; code: string };
    const note = await paper(`/dispatches/${id}/note.pdf?language=fr&page=LETTER`, [203]);
    expect(codes(note)).toEqual([code]);
    expect(note.language).toBe('fr');
    expect(note.pages[0]?.widthMm).toBeCloseTo(215.9, 1);
    const text = allText(note);
    for (const words of ['Bon de livraison', 'Hôtel des Marées', lotCode]) {
      expect(text).toContain(words);
    }
  });
});
