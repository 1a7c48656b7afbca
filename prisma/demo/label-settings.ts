import type { DemoClient } from './demo-client';
import type { MasterData } from './master-data';
import { BOXES, PIECES } from './recipes';

const STORAGE = {
  en: 'Keep dry at 14 to 18 °C, away from strong smells.',
  fr: 'À conserver au sec, de 14 à 18 °C, à l’abri des odeurs fortes.',
};

const BOX_NAMES: Readonly<Record<string, { en: string; fr: string }>> = {
  'Box of nine, assorted': {
    en: 'Assorted filled chocolates',
    fr: 'Assortiment de bonbons de chocolat fourrés',
  },
  'Box of sixteen, assorted': {
    en: 'Assorted filled chocolates',
    fr: 'Assortiment de bonbons de chocolat fourrés',
  },
  'Box of nine hazelnut hearts': {
    en: 'Filled milk chocolates with hazelnut praline',
    fr: 'Bonbons de chocolat au lait fourrés au praliné noisette',
  },
};

interface Settings {
  readonly usual: boolean;
  readonly version: number;
  readonly nutrition: object;
}

const set = async (client: DemoClient, itemId: string, change: object): Promise<void> => {
  const path = `/items/${itemId}/label-settings`;
  const { version, ...settings } = await client.get<Settings>(path);
  Reflect.deleteProperty(settings, 'usual');
  await client.change('PUT', path, version, {
    ...settings,
    nutrition: { ...settings.nutrition, smallLocalMaker: true },
    storage: STORAGE,
    ...change,
  });
};

/** How the demo's boxes and loose pieces are labelled. */
export const setLabels = async (owner: DemoClient, data: MasterData): Promise<void> => {
  for (const box of BOXES) {
    await set(owner, data.items.get(box.name) ?? '', {
      names: BOX_NAMES[box.name] ?? {},
      legalName: box.slots.length > 1 ? 'assortment' : 'filled_chocolate',
      onlyChocolates: true,
      largestSurfaceCm2: box.name.includes('sixteen') ? '256' : '144',
    });
  }
  for (const piece of PIECES) {
    await set(owner, data.items.get(piece.name) ?? '', {
      names: { en: piece.name, fr: piece.name },
      legalName: 'praline',
    });
  }
};
