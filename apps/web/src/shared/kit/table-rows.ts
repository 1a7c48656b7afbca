import { useMemo, useState } from 'react';
import type { Column } from './data-table';

/** As many rows as one looks through without searching; the rest comes when asked for. */
const FIRST = 20;
const STEP = 40;

export interface Order {
  readonly key: string;
  readonly down: boolean;
}

const compare = (a: string, b: string, numeric: boolean): number =>
  numeric ? Number(a) - Number(b) : a.localeCompare(b, undefined, { numeric: true });

const inOrder = <R>(
  rows: readonly R[],
  columns: readonly Column<R>[],
  order: Order | undefined,
): readonly R[] => {
  const column = columns.find(({ key }) => key === order?.key);
  if (column === undefined || order === undefined) return rows;
  const sign = order.down ? -1 : 1;
  return [...rows].sort(
    (a, b) => sign * compare(column.text(a), column.text(b), column.numeric === true),
  );
};

const plain = (text: string): string =>
  text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLocaleLowerCase();

/** Rows in which each of the words stands somewhere. */
const withWords = <R>(
  rows: readonly R[],
  columns: readonly Column<R>[],
  text: string,
): readonly R[] => {
  const words = plain(text).split(/\s+/).filter(Boolean);
  if (words.length === 0) return rows;
  return rows.filter((row) => {
    const all = plain(columns.map((column) => column.text(row)).join(' '));
    return words.every((word) => all.includes(word));
  });
};

/** What of a register is on screen: filtered, in order, and a first part of it. */
export const useTableRows = <R>(
  rows: readonly R[],
  columns: readonly Column<R>[],
  onMore: (() => void) | undefined,
) => {
  const [order, setOrder] = useState<Order>();
  const [filter, setFilter] = useState('');
  const [shown, setShown] = useState(FIRST);
  const sorted = useMemo(
    () => inOrder(withWords(rows, columns, filter), columns, order),
    [rows, columns, filter, order],
  );
  const more = (): void => {
    const next = shown + STEP;
    setShown(next);
    if (next > rows.length) onMore?.();
  };
  return {
    sorted,
    shown,
    order,
    setOrder,
    filter,
    setFilter,
    /** A part of a list that the service has not sent is not searched, so no search is offered. */
    isLong: rows.length > FIRST && onMore === undefined,
    more: sorted.length > shown || onMore !== undefined ? more : undefined,
  };
};
