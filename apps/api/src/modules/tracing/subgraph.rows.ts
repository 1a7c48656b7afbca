/**
 * The members of the JSON row of `subgraphQuery`. Lots and batches are numbered by their place in
 * their lists; a null list is an empty one. Weights are whole milligrams: at most 17 digits are
 * added up in SQL, and one lot has at most 14, which a JSON number holds exactly.
 */
export type LotRow = readonly [
  id: string,
  code: string,
  itemId: string,
  madeByBatch: number | null,
  madeMg: number,
  madeQuantity: string,
  onHandQuantity: string,
  onHandMg: number,
  madeOn: string,
  bestBefore: string | null,
  useBy: string | null,
  placeId: string | null,
  /** 1 behind, 2 ahead, 3 both: the lots that were asked about. */
  sides: 1 | 2 | 3,
  deliveryLineId: string | null,
  refused: boolean,
];

export type BatchRow = readonly [
  id: string,
  code: string,
  kind: string,
  state: 'open' | 'finished' | 'abandoned',
  openedAt: string,
  endedAt: string | null,
  operatorId: string,
  tankId: string | null,
  placeId: string | null,
  recipeVersionId: string | null,
];

export interface SubgraphRows {
  readonly lots: readonly LotRow[] | null;
  readonly batches: readonly BatchRow[] | null;
  readonly draws:
    | readonly (readonly [batch: number, lot: number | null, mg: number, quantity: string | null])[]
    | null;
  readonly losses:
    | readonly (readonly [
        batch: number,
        lot: number | null,
        ofLot: boolean,
        kind: string,
        mg: number,
      ])[]
    | null;
  readonly heels: readonly (readonly [batch: number, lot: number])[] | null;
}

export interface DetailRows extends SubgraphRows {
  readonly items: Readonly<
    Record<string, readonly [name: string, kind: string, unit: string]>
  > | null;
  readonly people: Readonly<Record<string, string>> | null;
  readonly places: Readonly<Record<string, string>> | null;
  readonly tanks: Readonly<Record<string, string>> | null;
  readonly received:
    | readonly (readonly [
        lot: number,
        supplier: string,
        supplierLotCode: string,
        reference: string | null,
        receivedOn: string,
      ])[]
    | null;
  readonly dispatched:
    | readonly (readonly [
        lot: number,
        dispatch: string,
        customerId: string | null,
        customer: string | null,
        sentOn: string,
        quantity: string,
        mg: number,
        /** What of the line had come back when the question was asked. */
        returned: string,
        returnedMg: number,
      ])[]
    | null;
  readonly moves:
    readonly (readonly [lot: number, kind: string, quantity: string, mg: number])[] | null;
  readonly held: readonly number[] | null;
  readonly readings:
    | readonly (readonly [
        batch: number | null,
        lot: number | null,
        measure: string,
        value: string,
        verdict: string,
        at: string,
        userId: string,
        correctiveAction: string | null,
        id: string,
      ])[]
    | null;
}
