import { epcisDocument, epcisEvent, type TraceFact } from '@api/domain/epcis';
import { epcisValidator } from '../../support/epcis/schema';
import { facts, naming } from '../../support/epcis/facts';

// GS1 EPCIS 2.0 and CBV 2.0: the required parts and the cases below follow GS1's own JSON Schema
// and its example 9.6.4 (repository gs1/EPCIS, commit 2b888befbc071e1c2d388e027b30149b3f51dcef).

type Json = Record<string, unknown>;

const written = (some: readonly TraceFact[]): Json => {
  const { head, tail } = epcisDocument(naming, '2026-03-03T00:00:00Z');
  const events = some.map((fact) => JSON.stringify(epcisEvent(naming, fact)));
  return JSON.parse(`${head}${events.join(',')}${tail}`) as Json;
};

const strict = epcisValidator();
const lax = epcisValidator(false);

/** The making of `facts` with some of its keys replaced, or dropped when undefined. */
const making = (change: Json): Json => {
  const document = written(facts.slice(1, 2));
  const { eventList } = document['epcisBody'] as { eventList: Json[] };
  Object.assign(eventList[0] ?? {}, change);
  return JSON.parse(JSON.stringify(document)) as Json;
};

const changedQuantity = (change: Json): Json =>
  making({
    inputQuantityList: [{ epcClass: 'https://workshop.example/lots/C', quantity: 10, ...change }],
  });

describe('what the service writes', () => {
  it('is valid for every kind of fact, and for none', () => {
    expect(strict(written(facts)) || strict.errors).toBe(true);
    expect(strict(written([])) || strict.errors).toBe(true);
  });

  it('names a lot by Digital Link when it has a GTIN, else under the own address', () => {
    const text = JSON.stringify(written(facts));
    expect(text).toContain('https://id.gs1.org/01/09506000134352/10/G-7');
    expect(text).toContain('https://workshop.example/lots/C%203');
    expect(text).toContain('https://workshop.example/suppliers/S%2F1');
  });

  it('states weights in grams, pieces without a unit, and leaves out what weighs nothing', () => {
    const [, cooked, , packed] = (
      written(facts)['epcisBody'] as { eventList: Record<string, Json[]>[] }
    ).eventList;
    expect(cooked?.['inputQuantityList']).toEqual([
      { epcClass: 'https://workshop.example/lots/C%203', quantity: 500, uom: 'GRM' },
    ]);
    expect(packed?.['childQuantityList']).toEqual([
      { epcClass: 'https://workshop.example/lots/P-1', quantity: 240 },
    ]);
  });

  it('states no quantity of contents that several box lots share', () => {
    const shared = facts.map((fact) =>
      fact.kind === 'packed' ? { ...fact, contentsShared: true } : fact,
    );
    const document = written(shared);
    expect(strict(document) || strict.errors).toBe(true);
    const { eventList } = document['epcisBody'] as { eventList: Record<string, Json[]>[] };
    expect(eventList[3]?.['childQuantityList']).toEqual([
      { epcClass: 'https://workshop.example/lots/P-1' },
    ]);
  });
});

describe('the validator', () => {
  it.each<[string, Json]>([
    ['no time zone offset', { eventTimeZoneOffset: undefined }],
    ['offset Z', { eventTimeZoneOffset: 'Z' }],
    ['offset +2:00', { eventTimeZoneOffset: '+2:00' }],
    [
      'no outputs and no transformation id',
      { outputQuantityList: undefined, transformationID: undefined },
    ],
  ])('refuses %s, with or without formats', (_, change) => {
    expect(strict(making(change))).toBe(false);
    expect(lax(making(change))).toBe(false);
  });

  it('takes a transformation id in place of the outputs, and a step that is a URI', () => {
    expect(strict(making({ outputQuantityList: undefined }))).toBe(true);
    expect(strict(making({ bizStep: 'https://workshop.example/steps/tempering' }))).toBe(true);
  });

  it.each<[string, Json]>([
    ['uom "kg"', { uom: 'kg' }],
    ['a quantity as text', { quantity: '10' }],
    ['a further key', { lot: 'C' }],
  ])('refuses %s in a quantity', (_, change) => {
    expect(strict(changedQuantity(change))).toBe(false);
  });

  it.each(['schemaVersion', 'creationDate', '@context'])('refuses a document without %s', (key) => {
    const rest = Object.fromEntries(
      Object.entries(written(facts)).filter(([name]) => name !== key),
    );
    expect(strict(rest)).toBe(false);
    expect(strict({ ...rest, epcisBody: {} })).toBe(false);
  });

  // The proof that formats are on: each of these is missed by a validator that ignores them.
  it.each<[string, Json]>([
    ['bizStep "tempering"', { bizStep: 'tempering' }],
    ['a plain own field', { myField: 1 }],
    ['a plain key in ilmd', { ilmd: { bestBefore: '2026-01-01' } }],
    ['an action in a transformation', { action: 'ADD' }],
    ['bizTransaction "PO-1"', { bizTransactionList: [{ type: 'po', bizTransaction: 'PO-1' }] }],
  ])('refuses %s with formats on, and misses it without', (_, change) => {
    expect(strict(making(change))).toBe(false);
    expect(lax(making(change))).toBe(true);
  });

  it('enforces date-time', () => {
    expect(strict(making({ eventTime: 'yesterday' }))).toBe(false);
    expect(lax(making({ eventTime: 'yesterday' }))).toBe(true);
  });
});
