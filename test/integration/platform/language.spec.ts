import { randomUUID } from 'node:crypto';
import type { Response } from 'supertest';
import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSupplier, receive, type ReceivedLine } from '../../support/workshop/fixtures';

const NBSP = '\u00a0';
const MARKS = /[\u2068\u2069]/;

let service: TestService;
let supplierId: string;
let creamId: string;
let line: ReceivedLine;

beforeAll(async () => {
  service = await startTestService();
  supplierId = (await addSupplier(service)).id;
  const cream = { name: 'Cream 35 %', kind: 'ingredient', perishable: true, warmestTempC: '6.0' };
  creamId = (await addItem(service, cream)).id;
  line = await receive(service, supplierId, {
    itemId: creamId,
    quantity: '5000.000',
    price: '21.00',
    tempC: '8.4',
    useBy: '2099-01-01',
  });
});
afterAll(() => service.close());

const late = () => ({
  supplierId,
  lines: [
    {
      itemId: creamId,
      supplierLotCode: 'A',
      quantity: '1.000',
      price: '1.00',
      tempC: '4.0',
      useBy: '2020-01-01',
    },
  ],
});

const refusedIn = (language: string | undefined) => {
  const sent = service.as.maker.post('/deliveries', late());
  return language === undefined ? sent : sent.set('Accept-Language', language);
};

const plain = (answer: Response) => ({
  body: answer.body as unknown,
  text: answer.text,
  headers: answer.headers as Readonly<Record<string, string>>,
});

const ENGLISH = {
  type: '/problems/goods-past-use-by',
  title: 'Past its use-by date',
  detail:
    'Cream 35 %, lot A, is past its use-by date 2020-01-01. Refuse the line, and tell the supplier.',
};

describe('a refusal', () => {
  it.each([undefined, 'en-GB,en;q=0.9', 'mi', 'fr;q=0', '*'])(
    'is told in English to a reader of %s',
    async (language) => {
      const { body, headers } = plain(await refusedIn(language));
      expect(body).toMatchObject(ENGLISH);
      expect(headers).toMatchObject({ 'content-language': 'en' });
      expect(headers['vary']).toContain('Accept-Language');
    },
  );

  it.each(['fr', 'fr-BE,fr;q=0.9,en;q=0.5', 'mi, fr;q=0.3'])(
    'is told in French to a reader of %s',
    async (language) => {
      const { body, headers, text } = plain(await refusedIn(language));
      expect(body).toMatchObject({
        type: '/problems/goods-past-use-by',
        title: 'Date limite de consommation dépassée',
        detail:
          'Cream 35 %, lot A, a dépassé sa date limite de consommation du 2020-01-01. ' +
          'Refusez la ligne et prévenez le fournisseur.',
      });
      expect(headers).toMatchObject({ 'content-language': 'fr' });
      expect(text).not.toMatch(MARKS);
    },
  );

  it('names in French what is not found, and an address that is not there', async () => {
    const lot = await service.as.maker.get('/lots/NONE').set('Accept-Language', 'fr').expect(404);
    expect(lot.body).toMatchObject({
      title: 'Introuvable',
      detail: `Introuvable ici${NBSP}: lot «${NBSP}NONE${NBSP}». Vérifiez le code ou cherchez dans la liste.`,
    });
    const none = await service.as.maker.get('/nowhere').set('Accept-Language', 'fr').expect(404);
    expect(none.body).toMatchObject({ detail: 'Il n’y a rien à cette adresse.' });
    const stranger = await service.anonymous.get('/lots').set('Accept-Language', 'fr').expect(401);
    expect(stranger.body).toMatchObject({ title: 'Non identifié' });
  });
});

describe('a field that is not right', () => {
  it('is told in French, by its name', async () => {
    const sent = service.as.owner.post('/suppliers', { name: '', colour: 'red' });
    const { body, text } = plain(await sent.set('Accept-Language', 'fr').expect(400));
    expect(body).toMatchObject({
      title: 'Certains champs ne sont pas justes',
      errors: expect.arrayContaining([
        { pointer: '/name', message: 'name ne doit pas être vide' },
        { pointer: '/colour', message: 'colour n’est pas un champ connu' },
      ]) as unknown,
    });
    expect(text).not.toMatch(MARKS);
  });

  it('is told in English as ever', async () => {
    const { body } = plain(await service.as.owner.post('/suppliers', { name: '' }).expect(400));
    expect(body).toMatchObject({
      errors: [{ pointer: '/name', message: 'name must not be empty' }],
    });
  });
});

describe('a sentence inside an answer', () => {
  it('was booked by an English reader and is told in French to a French one', async () => {
    expect(line.heldBecause).toContain('Arrived at 8.4 °C; the limit is 6 °C.');
    const path = `/lots/${line.lotCode}`;
    const { body, text } = plain(await service.as.maker.get(path).set('Accept-Language', 'fr'));
    const reasons = (body as { holds: { reason: string }[] }).holds.map((hold) => hold.reason);
    expect(reasons.join(' ')).toContain(
      `Arrivé à 8.4${NBSP}°C${NBSP}; la limite est de 6${NBSP}°C.`,
    );
    expect(text).not.toMatch(MARKS);
  });

  it('holds the names that people gave as they gave them', async () => {
    const path = `/scan?text=${line.lotCode}`;
    const { body } = plain(
      await service.as.maker.get(path).set('Accept-Language', 'fr').expect(200),
    );
    expect(JSON.stringify(body)).toContain('Cream 35 %');
    expect(JSON.stringify(body)).toContain('Il est déjà bloqué.');
  });

  it('is told anew when a booking is repeated under its key by a reader of another language', async () => {
    const key = randomUUID();
    const booking = {
      supplierId,
      lines: [
        {
          itemId: creamId,
          supplierLotCode: 'B',
          quantity: '10.000',
          price: '1.00',
          tempC: '9.0',
          useBy: '2099-01-01',
        },
      ],
    };
    const first = await service.as.maker.post('/deliveries', booking, key).expect(201);
    const again = service.as.maker.post('/deliveries', booking, key);
    const second = await again.set('Accept-Language', 'fr').expect(201);
    expect(first.text).toContain('Arrived at 9 °C');
    expect(second.text).toContain('Arrivé à 9');
    expect((second.body as { id: string }).id).toBe((first.body as { id: string }).id);
  });

  it('leaves no mark in a table', async () => {
    const table = await service.as.owner.get('/exports/lots.csv').expect(200);
    expect(table.text).toContain(line.lotCode);
    expect(table.text).not.toMatch(MARKS);
  });
});
