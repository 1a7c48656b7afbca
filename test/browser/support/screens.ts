import type { APIRequestContext } from 'playwright-core';

const first = async (request: APIRequestContext, path: string, field: string): Promise<string> => {
  const answer = (await (await request.get(`/api/${path}`)).json()) as {
    items: Record<string, string>[];
  };
  const found = answer.items[0]?.[field];
  if (found === undefined) throw new Error(`the demo workshop has nothing at /api/${path}`);
  return found;
};

/** Addresses of every screen, each with something to show in it. */
export const screensOf = async (request: APIRequestContext): Promise<readonly string[]> => {
  const box = await first(request, 'lots?kind=box&state=on_hand&limit=1', 'code');
  const filling = await first(request, 'items?kind=filling&limit=1', 'id');
  const boxItem = await first(request, 'items?kind=box&limit=1', 'id');
  const ingredient = await first(request, 'items?kind=ingredient&limit=1', 'id');
  const ingredientLot = await first(request, 'lots?kind=ingredient&state=on_hand&limit=1', 'code');
  const cook = await first(request, 'batches?kind=cook&limit=1', 'id');
  const cast = await first(request, 'batches?kind=cast&limit=1', 'id');
  const pack = await first(request, 'batches?kind=pack&limit=1', 'id');
  const complaint = await first(request, 'complaints?limit=1', 'code');
  const delivery = await first(request, 'deliveries?limit=1', 'id');
  const mould = await first(request, 'moulds?limit=1', 'tag');
  return [
    ...['/', '/waiting', '/goods-in', '/goods-in/new', `/goods-in/${delivery}`, '/goods-in/items'],
    ...[`/goods-in/items/${ingredient}`, '/store', '/store/count', `/store/lots/${box}`],
    ...[`/store/lots/${ingredientLot}`, '/kitchen', '/kitchen/new', '/moulding/new?kind=piece'],
    ...[`/kitchen/batches/${cook}`, `/moulding/batches/${cast}`, `/packing/batches/${pack}`],
    ...['/moulding', '/moulding/moulds', '/moulding/tanks', '/packing', `/packing/labels/${box}`],
    ...['/out', '/out/new', '/out/orders', '/out/plan', '/out/plan/settings'],
    ...['/out/forecast', '/goods-in/buying'],
    ...['/trace', `/trace/lots/${box}`, `/trace/lots/${ingredientLot}`, `/trace/moulds/${mould}`],
    ...['/trace/recalls', '/trace/recalls/new', '/trace/complaints'],
    ...[
      `/trace/complaints/${complaint}`,
      '/recipes',
      '/recipes/water-activity',
      `/recipes/${filling}`,
      `/recipes/${boxItem}`,
    ],
    ...['/prices', `/prices/${boxItem}`, '/diary', '/workshop', '/workshop/people'],
    ...['/workshop/suppliers', '/workshop/customers', '/workshop/places', '/workshop/rates'],
    ...['/workshop/import', '/workshop/data', '/found?text=nothing-here'],
  ];
};
