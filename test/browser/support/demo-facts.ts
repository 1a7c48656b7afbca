import type { Locator } from 'playwright-core';
import type { Device } from './browser';

export interface LotFacts {
  readonly code: string;
  readonly itemName: string;
  readonly madeOn: string;
  readonly onHandQuantity: string;
  readonly supplierLotCode: string | null;
}

/** A lot of the demo workshop that a story is to start from, as a hand would take it off a shelf. */
export const someLot = async (
  { device }: { readonly device: Device },
  query: string,
  fits: (lot: LotFacts) => boolean,
): Promise<LotFacts> => {
  const answer = await device.context.request.get(`/api/lots?${query}`);
  const { items } = (await answer.json()) as { items: LotFacts[] };
  const found = items.filter(fits).at(-1);
  if (found === undefined) throw new Error(`the demo workshop has no lot like that: ${query}`);
  return found;
};

/** The cells of a register, row by row, as they read on screen. */
export const rowsOf = async (table: Locator): Promise<readonly (readonly string[])[]> => {
  // The heads of a table stand before its rows have come.
  await table.locator('tbody tr').first().waitFor();
  return table
    .locator('tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) =>
        Array.from(row.querySelectorAll('td')).map((cell) =>
          cell.innerText.replaceAll(/\s+/g, ' ').trim(),
        ),
      ),
    );
};
