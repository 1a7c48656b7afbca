import { bodyOf, formOf, sumOf } from './specification-form';

describe('a specification in its form', () => {
  const view = {
    id: 's', itemId: 'i', supplierId: 'p', supplierName: 'P', number: 1, state: 'draft' as const,
    ingredient: {
      names: { en: 'milk chocolate' }, percent: null, origins: [], flags: { definedInUnionLaw: true },
      parts: [{ names: { en: 'sugar' }, percent: '45', origins: [], parts: [] }],
    },
    allergens: { milk: 'contains' },
    composition: { water: '1', fat: { cocoaButter: '22', milkFat: '5' }, sugars: { sucrose: '45' } },
    nutrition: { fat: '27' }, statements: { chocolateKind: 'milk_chocolate' }, document: 'sheet 7',
    approvedAt: null, approvedBy: null, version: 1,
  }; // prettier-ignore

  it('comes back as it was, with what the form does not show', () => {
    expect(bodyOf(formOf(view))).toEqual({
      ingredient: view.ingredient,
      allergens: view.allergens,
      composition: view.composition,
      nutrition: view.nutrition,
      statements: view.statements,
      document: 'sheet 7',
    });
  });

  it('adds up the figures exactly', () => {
    expect(sumOf(formOf(view).figures)).toBe('73');
  });

  it('leaves out an allergen that nobody stated, which the service reads as not known', () => {
    const form = { ...formOf(view), allergens: { milk: 'contains', egg: '' } };
    expect(bodyOf(form).allergens).toEqual({ milk: 'contains' });
  });
});
