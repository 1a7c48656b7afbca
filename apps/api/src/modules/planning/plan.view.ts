import {
  shoppingList,
  type Plan,
  type PlannedUse,
  type SupplierOrder,
  type WayOut,
} from '../../domain/planning';
import { Decimal } from '../../domain/units';
import { moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { PlanContent, PlannedUseView, SupplierOrderView, WayOutView } from './plan.dto';
import type { LoadedProblem } from './plan-problem.queries';
import { loadTerms } from './supply-terms.queries';

const nameOf = (loaded: LoadedProblem, item: string): string =>
  loaded.basis.items.get(item)?.name ?? item;

/** Resources, designs and items by the name that a person knows them by. */
const subjectOf = (loaded: LoadedProblem, subject: string): string =>
  loaded.designNames.get(subject) ?? loaded.tankNames.get(subject) ?? nameOf(loaded, subject);

const useView = (loaded: LoadedProblem, use: PlannedUse): PlannedUseView => {
  const { source } = use;
  const from =
    source.kind === 'lot'
      ? (loaded.lotCodes.get(source.lot) ?? source.lot)
      : source.kind === 'begun'
        ? (loaded.batchCodes.get(source.batch) ?? source.batch)
        : source.kind === 'planned'
          ? source.batch
          : null;
  return {
    itemId: use.item,
    itemName: nameOf(loaded, use.item),
    quantity: quantityText(use.quantity),
    source: source.kind,
    from,
  };
};

const shoppingView = (loaded: LoadedProblem, order: SupplierOrder): SupplierOrderView => ({
  supplier: order.supplier ?? null,
  orderBy: order.orderBy,
  cost: moneyText(order.cost),
  belowMinimum: moneyText(order.belowMinimum),
  lines: order.lines.map((line) => ({
    itemId: line.item,
    itemName: nameOf(loaded, line.item),
    needed: quantityText(line.needed),
    packs: line.packs ?? null,
    ordered: quantityText(line.ordered),
    cost: line.cost === undefined ? null : moneyText(line.cost),
    neededOn: line.neededOn,
    orderBy: line.orderBy,
  })),
});

const shoppingOf = async (tx: Tx, loaded: LoadedProblem, plan: Plan) => {
  const minimums = await tx.minimumOrder.findMany();
  const suppliers = new Map((await tx.supplier.findMany()).map(({ id, name }) => [id, name]));
  const byName = new Map(
    minimums.map(({ supplierId, amount }) => [
      suppliers.get(supplierId) ?? supplierId,
      new Decimal(amount.toString()),
    ]),
  );
  return shoppingList(plan.purchases, await loadTerms(tx, loaded), byName);
};

/** A plan with names and codes, as it is stored and shown. */
export const planContent = async (
  tx: Tx,
  loaded: LoadedProblem,
  plan: Plan,
): Promise<PlanContent> => {
  const demandOf = new Map(loaded.demands.map((demand) => [demand.id, demand]));
  const labelOf = (id: string): string => demandOf.get(id)?.label ?? id;
  return {
    today: loaded.problem.today,
    batches: plan.batches.map((batch) => ({
      key: batch.id,
      itemId: batch.item,
      itemName: nameOf(loaded, batch.item),
      step: batch.step,
      day: batch.day,
      latestDay: batch.latestDay,
      readyDay: batch.readyDay,
      quantity: quantityText(batch.quantity),
      trays: batch.trays ?? null,
      mouldDesign: batch.design === undefined ? null : subjectOf(loaded, batch.design),
      minutes: batch.minutes.map(({ resource, minutes }) => ({
        resource: subjectOf(loaded, resource),
        minutes: minutes.toFixed(1),
      })),
      uses: batch.uses.map((use) => useView(loaded, use)),
      for: [...new Set(batch.demands.map(labelOf))],
    })),
    shortfalls: plan.shortfalls.map((short) => ({
      demand: short.demand,
      for: labelOf(short.demand),
      itemId: short.item,
      itemName: nameOf(loaded, short.item),
      dueDay: demandOf.get(short.demand)?.dueDay ?? loaded.problem.today,
      missing: quantityText(short.missing),
      lostValue: moneyText(short.lostValue),
      because: short.because.map(({ kind, subject }) => ({
        kind,
        subject: subjectOf(loaded, subject),
      })),
    })),
    shopping: (await shoppingOf(tx, loaded, plan)).map((order) => shoppingView(loaded, order)),
  };
};

export const wayOutView = (loaded: LoadedProblem, way: WayOut): WayOutView => {
  const [subject, amount] = ((): [string | null, number | null] => {
    switch (way.kind) {
      case 'more_moulds':
        return [subjectOf(loaded, way.design), way.count];
      case 'longer_days':
        return [subjectOf(loaded, way.resource), way.minutesPerDay];
      case 'open_closed_day':
        return [way.day, null];
      case 'deliver_later':
        return [loaded.demands.find(({ id }) => id === way.demand)?.label ?? way.demand, way.days];
      case 'send_fewer':
        return [null, null];
    }
  })();
  return {
    kind: way.kind,
    subject,
    amount,
    cost: moneyText(way.cost),
    stillMissing: quantityText(way.stillMissing),
  };
};
