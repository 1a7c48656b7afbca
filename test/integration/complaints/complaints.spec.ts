import type { CommonCausesView } from '@api/modules/complaints/common-causes.dto';
import type { CodeMatchView, ComplaintView } from '@api/modules/complaints/complaints.dto';
import { Books } from '../../support/books/books';
import { smallShop } from '../../support/books/small-shop';
import { startTestService, type TestService } from '../../support/service/test-service';

const PNG = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

describe('complaints', () => {
  let service: TestService;
  let books: Books;

  beforeAll(async () => {
    service = await startTestService();
    books = await Books.open(service.databaseUrl);
    await smallShop(books);
    // A second day's boxes from another ganache and the same tank's next chocolate.
    await books.made({
      code: 'K5',
      at: '2026-03-14T08:00:00Z',
      draws: [
        ['CR2', '300'],
        ['T2', '300'],
      ],
      outputs: [{ code: 'G5', item: 'ganache', grams: '600' }],
    });
    await books.made({
      code: 'S5',
      kind: 'cast',
      at: '2026-03-15T08:00:00Z',
      draws: [
        ['G5', '500'],
        ['T2', '900'],
      ],
      outputs: [{ code: 'P5', item: 'bonbon', quantity: '120', grams: '1400' }],
    });
    await books.sent('D5', 'Hotel', '2026-03-16', { P5: ['100', '1160'] });
  });

  afterAll(async () => {
    await books.close();
    await service.close();
  });

  const register = async (body: object): Promise<ComplaintView> =>
    (
      await service.as.seller
        .post('/complaints', {
          kind: 'taste',
          what: 'tastes of soap',
          receivedOn: '2026-03-18',
          ...body,
        })
        .expect(201)
    ).body as ComplaintView;

  it('finds the lot of a code that was read without fault, and leaves a smudged one open', async () => {
    const clear = await register({ codeAsRead: 'B1' });
    expect(clear.lotCode).toBe('B1');
    const smudged = await register({ codeAsRead: 'P?' });
    expect(smudged.lotCode).toBeNull();
    const matches = (await service.as.seller.get('/complaints/code-search?text=P%3F').expect(200))
      .body as CodeMatchView[];
    expect(matches.map((match) => match.lotCode).sort()).toEqual(['P1', 'P5']);
    const known = await service.as.seller
      .patch(`/complaints/${smudged.code}`, smudged.version, { lotCode: 'P1' })
      .expect(200);
    expect((known.body as ComplaintView).lotCode).toBe('P1');
    await service.as.seller
      .patch(`/complaints/${smudged.code}`, smudged.version, { lotCode: 'P5' })
      .expect(412);
  });

  it('warns when health is in question, and closes only with an outcome', async () => {
    const ill = await register({ codeAsRead: 'B1', kind: 'allergic_reaction' });
    expect(ill.caution).toContain('doctor');
    await service.as.seller
      .patch(`/complaints/${ill.code}`, ill.version, { closed: true })
      .expect(422);
    const closed = await service.as.seller
      .patch(`/complaints/${ill.code}`, ill.version, {
        closed: true,
        outcome: 'told the authority',
      })
      .expect(200);
    expect((closed.body as ComplaintView).closedAt).not.toBeNull();
    const open = await service.as.auditor.get('/complaints?closed=false').expect(200);
    const codes = (open.body as { items: ComplaintView[] }).items.map((row) => row.code);
    expect(codes).not.toContain(ill.code);
  });

  it('keeps a photograph by what its bytes are, once, and only ever as a download', async () => {
    const { code } = await register({ codeAsRead: 'B1' });
    const path = `/complaints/${code}/photos`;
    const send = (bytes: Buffer, name: string) =>
      service.as.seller.upload(path, 'photo', bytes, { filename: name, contentType: 'text/html' });
    await send(Buffer.from('<script>alert(1)</script>'), 'a.png').expect(415);
    await send(Buffer.alloc(9 * 1024 * 1024, 0xff), 'large.jpg').expect(413);
    await send(PNG, '../../evil<name>.html').expect(201);
    const kept = (await send(PNG, 'again.png').expect(201)).body as ComplaintView;
    expect(kept.photos).toHaveLength(1);
    expect(kept.photos[0]).toMatchObject({ mediaType: 'image/png' });
    expect(kept.photos[0]?.name).not.toMatch(/[/<>]/);
    const got = await service.as.auditor.get(`${path}/${kept.photos[0]?.id ?? ''}`).expect(200);
    expect(got.headers['content-type']).toBe('image/png');
    expect(got.headers['content-disposition']).toMatch(/^attachment/);
    expect(got.headers['x-content-type-options']).toBe('nosniff');
    expect(Buffer.compare(got.body as Buffer, PNG)).toBe(0);
  });

  it('answers first with what all complaints share, then with figures', async () => {
    const codes = [];
    for (const read of ['P1', 'P1', 'B1']) codes.push((await register({ codeAsRead: read })).code);
    const view = (
      await service.as.seller.get(`/complaints/common-causes?ids=${codes.join(',')}`).expect(200)
    ).body as CommonCausesView;
    expect(view.complaints).toBe(3);
    const shared = view.shared.map((cause) => `${cause.kind} ${cause.name}`);
    expect(shared).toEqual(expect.arrayContaining(['lot P1', 'lot G1', 'lot CR1', 'mould M1']));
    expect(shared).not.toContain('lot G5');
    const [first] = view.suspects;
    // P1 holds all that is behind it: the record can't tell the pieces from their ganache.
    expect(first?.causes.map((cause) => cause.name)).toEqual(
      expect.arrayContaining(['P1', 'G1', 'CR1', 'TEA', 'M1']),
    );
    expect(first?.causes[0]).toMatchObject({ kind: 'lot', name: 'P1', itemName: 'bonbon' });
    expect(first?.mostSpecific).toBe(1);
    // 8 boxes of B1 and 20 pieces of P1 went out, 100 pieces of P5.
    expect(first).toMatchObject({
      complaintsWith: 3,
      othersWith: 25,
      complaintsWithout: 0,
      othersWithout: 100,
      halfAdded: true,
    });
    const chocolate = view.suspects.find((suspect) =>
      suspect.causes.some((cause) => cause.name === 'T1'),
    );
    expect(chocolate?.notDistinguishable).toBe(true);
    expect(
      view.smallestCovers.map((cover) => cover.causes.map((cause) => cause.name)),
    ).toContainEqual(['P1']);
  });

  it('counts people, tanks and fridges as causes, also a fridge that a filling has left', async () => {
    await books.place('Fridge');
    const move = (to: string) =>
      service.as.maker.post('/lots/G1/place', { placeId: books.id(to) }).expect(201);
    await move('Fridge');
    await move('Cold store');
    const { code } = await register({ codeAsRead: 'P1' });
    const view = (await service.as.seller.get(`/complaints/common-causes?ids=${code}`).expect(200))
      .body as CommonCausesView;
    const shared = view.shared.map((cause) => `${cause.kind} ${cause.name}`);
    expect(shared).toEqual(
      expect.arrayContaining([
        'place Fridge',
        'place Cold store',
        'tank Tank 1',
        'mould M1',
        'person The owner',
      ]),
    );
  });

  it('refuses complaints that are unknown or have no lot', async () => {
    await service.as.seller.get('/complaints/common-causes?ids=none').expect(404);
    const { code } = await register({ codeAsRead: 'unreadable' });
    await service.as.seller.get(`/complaints/common-causes?ids=${code}`).expect(422);
  });
});
