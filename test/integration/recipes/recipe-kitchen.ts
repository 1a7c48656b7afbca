import type { TestService } from '../../support/service/test-service';
import { addItem } from '../../support/workshop/fixtures';

/** Items that stand on generic compositions, by the key of their row. */
export const genericItems = async <K extends string>(
  service: TestService,
  keys: readonly K[],
): Promise<Record<K, string>> => {
  const ids: [K, string][] = [];
  for (const key of keys) {
    const item = await addItem(service, { name: `Trial ${key}`, kind: 'ingredient' });
    await service.as.maker
      .put(`/items/${item.id}/generic-composition`, item.version, { key })
      .expect(200);
    ids.push([key, item.id]);
  }
  return Object.fromEntries(ids) as Record<K, string>;
};

export const line = (itemId: string, quantity: string, role = 'base') => ({
  itemId,
  quantity,
  role,
});

export interface Version {
  readonly id: string;
  readonly number: number;
  readonly version: number;
  readonly yieldGrams: string | null;
}

export interface Analysis {
  readonly composition: {
    readonly outputGrams: string;
    readonly parts: readonly { readonly name: string; readonly gramsPer100g: string }[];
  };
  readonly balance: readonly { readonly quantity: string; readonly verdict: string }[];
  readonly waterActivity: {
    readonly status: string;
    readonly value: string | null;
    readonly error: string | null;
    readonly worst: string | null;
    readonly reason: string | null;
  };
  readonly shelfLife: {
    readonly days: number | null;
    readonly suggestedDays: number | null;
    readonly limits: readonly { readonly kind: string; readonly rules: boolean }[];
  };
  readonly allergens: readonly { readonly allergen: string; readonly presence: string }[];
  readonly energy: { readonly kJ: string; readonly kcal: string } | null;
  readonly cost: { readonly costPerUnit: string | null; readonly missing: string | null };
  readonly cautions: readonly { readonly code: string }[];
}
