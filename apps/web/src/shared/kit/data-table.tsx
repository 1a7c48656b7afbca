import { useMemo, useState, type ReactNode } from 'react';
import { useMessages } from '../language/catalogue';
import { saveText, toCsv } from './csv';
import { kitMessages } from './messages';

export interface Column<R> {
  readonly key: string;
  readonly title: string;
  readonly cell: (row: R) => ReactNode;
  /** Plain text for CSV and sorting; decimal strings sort as numbers when `numeric`. */
  readonly text: (row: R) => string;
  readonly numeric?: boolean;
}

interface Props<R> {
  readonly caption: string;
  readonly columns: readonly Column<R>[];
  readonly rows: readonly R[];
  readonly rowKey: (row: R, position: number) => string;
  /** File name of the CSV, without its ending; none is offered without it. */
  readonly csvName?: string;
  readonly empty?: ReactNode;
  /** Few short columns that are compared across: it stays a table on a phone too. */
  readonly small?: boolean;
}

interface Order {
  readonly key: string;
  readonly down: boolean;
}

const compare = (a: string, b: string, numeric: boolean): number =>
  numeric ? Number(a) - Number(b) : a.localeCompare(b, undefined, { numeric: true });

const inOrder = <R,>(
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

const Head = <R,>(props: {
  readonly column: Column<R>;
  readonly order: Order | undefined;
  readonly onOrder: (order: Order) => void;
}) => {
  const { column, order, onOrder } = props;
  const mine = order?.key === column.key ? order : undefined;
  const sort = mine === undefined ? 'none' : mine.down ? 'descending' : 'ascending';
  return (
    <th scope="col" className={column.numeric === true ? 'numeric' : undefined} aria-sort={sort}>
      {column.title === '' ? (
        <span className="unseen">·</span>
      ) : (
        <button
          type="button"
          onClick={() => onOrder({ key: column.key, down: mine !== undefined && !mine.down })}
        >
          {column.title}
          <span aria-hidden="true">{mine === undefined ? '' : mine.down ? ' ↓' : ' ↑'}</span>
        </button>
      )}
    </th>
  );
};

/** A register: sortable, readable on a phone (each row becomes a card), savable as CSV. */
export const DataTable = <R,>(props: Props<R>) => {
  const { caption, columns, rows, rowKey, csvName, empty, small = false } = props;
  const t = useMessages(kitMessages);
  const [order, setOrder] = useState<Order>();
  const sorted = useMemo(() => inOrder(rows, columns, order), [rows, columns, order]);
  if (rows.length === 0) return <div className="quiet">{empty ?? t('nothing')}</div>;
  const save = (): void => {
    const body = sorted.map((row) => columns.map((column) => column.text(row)));
    saveText(`${csvName ?? 'table'}.csv`, toCsv([columns.map(({ title }) => title), ...body]));
  };
  return (
    <div className="table-frame">
      <table className={small ? 'register register-small' : 'register'}>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <Head key={column.key} column={column} order={order} onOrder={setOrder} />
            ))}
          </tr>
        </thead>
        <tbody>
          {sorted.map((row, position) => (
            <tr key={rowKey(row, position)}>
              {columns.map((column) => (
                <td
                  key={column.key}
                  data-title={column.title}
                  className={column.numeric === true ? 'numeric' : undefined}
                >
                  {column.cell(row)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {csvName !== undefined && (
        <button type="button" className="link no-print" onClick={save}>
          {t('csv')}
        </button>
      )}
    </div>
  );
};
