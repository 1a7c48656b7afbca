import { Decimal, sum } from '../../apps/api/src/domain/units';
import { drawItem, openBatch } from './bench';
import type { Team } from './demo-client';
import type { MasterData } from './master-data';
import { BOXES, type DemoBox, type DemoFilling, type DemoPiece, FILLINGS, PIECES } from './recipes';
import { MOULD_DESIGNS } from './workshop';

const itemId = (data: MasterData, name: string): string => {
  const id = data.items.get(name);
  if (id === undefined) throw new Error(`demo: no item "${name}"`);
  return id;
};

const find = <T extends { readonly name: string }>(rows: readonly T[], name: string): T => {
  const found = rows.find((row) => row.name === name);
  if (found === undefined) throw new Error(`demo: no recipe of "${name}"`);
  return found;
};

const grams = (text: string | undefined, factor: Decimal): Decimal =>
  new Decimal(text ?? 0).times(factor).toDecimalPlaces(3);

/** Cooks a share of the recipe's lines; the strained leaf and what it holds back are weighed. */
export const cook = async (
  { maker }: Team,
  data: MasterData,
  name: string,
  share: string,
): Promise<void> => {
  const filling: DemoFilling = find(FILLINGS, name);
  const factor = new Decimal(share);
  const batch = await openBatch(maker, itemId(data, name), {
    plannedQuantity: grams(filling.yieldMassG, factor).toFixed(3),
  });
  let drawn = new Decimal(0);
  const strained: { kind: string; massGrams: string; lotCode: string }[] = [];
  for (const line of filling.lines) {
    const quantity = grams(line.quantity, factor);
    const taken = await drawItem(maker, batch.id, { itemId: itemId(data, line.item), quantity });
    drawn = drawn.plus(quantity);
    if (line.role !== 'infusion') continue;
    for (const portion of taken) {
      strained.push({ kind: 'held_back', massGrams: portion.quantity, lotCode: portion.lotCode });
    }
  }
  const losses = [
    { kind: 'steam', mass: grams(filling.steamG, factor) },
    { kind: 'held_back', mass: grams(filling.heldBackG, factor) },
    { kind: 'scrapings', mass: grams(filling.scrapingsG, factor) },
  ].filter(({ mass }) => mass.greaterThan(0));
  const lost = sum([
    ...losses.map(({ mass }) => mass),
    ...strained.map((loss) => new Decimal(loss.massGrams)),
  ]);
  await maker.post(`/batches/${batch.id}/finish`, {
    outputs: [{ quantity: drawn.minus(lost).toFixed(3) }],
    losses: [
      ...strained,
      ...losses.map(({ kind, mass }) => ({ kind, massGrams: mass.toFixed(3) })),
    ],
    labourMinutes: grams(filling.minutes, factor).toFixed(2),
  });
};

export interface CastOptions {
  /** Which of the design's trays, counted from 0. */
  readonly trays: readonly number[];
  /** Cavities rejected in the first tray. */
  readonly rejects: number;
}

/** Casts whole trays: colour, shell and cap from the tank, filling; rejects are counted. */
export const cast = async (
  { maker }: Team,
  data: MasterData,
  name: string,
  { trays, rejects }: CastOptions,
): Promise<void> => {
  const piece: DemoPiece = find(PIECES, name);
  const { design } = MOULD_DESIGNS[piece.design];
  const cavities = design.rows * design.columns;
  const count = new Decimal(cavities * trays.length);
  const batch = await openBatch(maker, itemId(data, name), { plannedTrays: trays.length });
  const tags = data.moulds.get(piece.design) ?? [];
  for (const [index, tray] of trays.entries()) {
    await maker.post(`/batches/${batch.id}/mould-uses`, {
      mouldTag: tags[tray],
      cavitiesFilled: cavities,
      rejectCavities:
        index === 0 ? Array.from({ length: rejects }, (_, cavity) => cavity * 3 + 1) : [],
    });
  }
  const fromTank = (perPiece: string, role: string) =>
    maker.post(`/batches/${batch.id}/draws`, {
      tankId: data.tanks.get(piece.chocolate),
      quantity: count.times(perPiece).toFixed(3),
      role,
    });
  await fromTank(piece.shellG, 'shell');
  await maker.post(`/batches/${batch.id}/readings`, {
    measure: 'temp_c',
    value: piece.chocolate === 'dark' ? '31.6' : '29.4',
    step: 'Colour and shell',
    instrument: 'Probe at the tank',
  });
  await drawItem(maker, batch.id, {
    itemId: itemId(data, piece.filling),
    quantity: count.times(piece.fillingG),
    role: 'filling',
  });
  await fromTank(piece.capG, 'cap');
  if (piece.colour !== undefined && piece.colourG !== undefined) {
    await drawItem(maker, batch.id, {
      itemId: itemId(data, piece.colour),
      quantity: count.times(piece.colourG),
      role: 'decoration',
    });
  }
  await maker.post(`/batches/${batch.id}/finish`, {
    outputs: [
      { quantity: count.minus(rejects).toFixed(0), placeId: data.places.get('Finished goods') },
    ],
    losses: rejects === 0 ? [] : [{ kind: 'rejects', pieces: rejects }],
    labourMinutes: new Decimal(trays.length * 14).toFixed(2),
  });
};

interface Run {
  readonly boxes: number;
  readonly batchId: string | null;
}

/** Packs boxes; the service splits them into box lots where a piece lot changes. */
export const pack = async (
  { seller, maker }: Team,
  data: MasterData,
  name: string,
  boxes: number,
): Promise<void> => {
  const box: DemoBox = find(BOXES, name);
  const batch = await openBatch(maker, itemId(data, name), { plannedQuantity: String(boxes) });
  for (const [pieceName, slots] of box.slots) {
    await drawItem(maker, batch.id, {
      itemId: itemId(data, pieceName),
      quantity: new Decimal(slots * boxes),
      role: 'slot',
    });
  }
  for (const material of box.packaging) {
    await drawItem(maker, batch.id, {
      itemId: itemId(data, material),
      quantity: new Decimal(boxes),
      role: 'packaging',
    });
  }
  const { runs } = await maker.post<{ runs: Run[] }>(`/batches/${batch.id}/split`, { boxes });
  for (const run of runs) {
    await seller.post(`/batches/${run.batchId ?? batch.id}/finish`, {
      outputs: [{ quantity: String(run.boxes), placeId: data.places.get('Finished goods') }],
      labourMinutes: new Decimal(box.minutes).times(run.boxes).toFixed(2),
    });
  }
};
