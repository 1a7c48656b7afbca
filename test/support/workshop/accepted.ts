import type { TestService } from '../service/test-service';

interface DrawOfAnother {
  readonly lotCode: string;
  readonly quantity: string;
  readonly role: string;
  readonly reason: string;
}

interface Changes {
  readonly allergens: readonly { allergen: string; after: string; isWorse: boolean }[];
}

/** The draw of a lot that the recipe doesn't name, by a person who has read the comparison. */
export const accepted = async (
  service: TestService,
  batchId: string,
  draw: DrawOfAnother,
  insteadOfItemId: string | null = null,
): Promise<object> => {
  const asked = { itemId: insteadOfItemId, lotCode: draw.lotCode, quantity: draw.quantity };
  const answer = await service.as.maker
    .post(`/batches/${batchId}/substitutions`, asked)
    .expect(200);
  const worse = (answer.body as Changes).allergens.filter(({ isWorse }) => isWorse);
  const allergens = worse.map(({ allergen, after }) => ({ allergen, after }));
  return { ...draw, acceptance: { insteadOfItemId, allergens } };
};
