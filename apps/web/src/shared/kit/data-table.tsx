import { TextInput } from '@mantine/core';
import type { ReactNode } from 'react';
import { useMessages } from '../language/catalogue';
import { saveText, toCsv } from './csv';
import { kitMessages } from './messages';
import { MoreButton } from './more-button';
import { type Order, useTableRows } from './table-rows';

export interface Column<R> {
  readonly key: string;
  readonly title: string;
  readonly cell: (row: R) => ReactNode;
  /** Plain text for CSV and sorting; decimal strings sort as numbers when `numeric`. */
  readonly text: (row: R) => string;
  readonly numeric?: boolean;
  /** Never broken into two lines: a day, a time. */
  readonly tight?: boolean;
  /** Long text that takes the whole width of a phone. */
  readonly wide?: boolean;
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
  /** Cells that explain themselves: a phone shows them one after another without their titles. */
  readonly terse?: boolean;
  /** Asks the service for the next part of the list, when there is one. */
  readonly onMore?: (() => void) | undefined;
}

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

const classOf = <R,>({ numeric, tight, wide, title }: Column<R>): string | undefined =>
  [
    numeric === true && 'numeric',
    tight === true && 'tight',
    wide === true && 'wide',
    title === '' && 'to-do',
  ]
    .filter(Boolean)
    .join(' ') || undefined;

/**
 * A register: sortable, savable as CSV, a long one searchable and shown part by part. On a phone
 * each row becomes an entry under its first column. Paper gets every row.
 */
export const DataTable = <R,>(props: Props<R>) => {
  const { caption, columns, rows, rowKey, csvName, empty, onMore } = props;
  const t = useMessages(kitMessages);
  const { sorted, shown, ...table } = useTableRows(rows, columns, onMore);
  if (rows.length === 0) return <div className="quiet">{empty ?? t('nothing')}</div>;
  const kind = `register${props.small === true ? ' register-small' : ''}${props.terse === true ? ' register-terse' : ''}`;
  const save = (): void => {
    const body = sorted.map((row) => columns.map((column) => column.text(row)));
    saveText(`${csvName ?? 'table'}.csv`, toCsv([columns.map(({ title }) => title), ...body]));
  };
  return (
    <div className="table-frame">
      {table.isLong && (
        <TextInput
          className="table-filter no-print"
          type="search"
          aria-label={t('filterOf', { caption })}
          placeholder={t('filter')}
          value={table.filter}
          onChange={(event) => table.setFilter(event.currentTarget.value)}
        />
      )}
      <table className={kind}>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <Head key={column.key} column={column} order={table.order} onOrder={table.setOrder} />
            ))}
          </tr>
        </thead>
        <tbody>
          {sorted.map((row, position) => (
            <tr key={rowKey(row, position)} className={position < shown ? undefined : 'later'}>
              {columns.map((column) => (
                <td key={column.key} data-title={column.title} className={classOf(column)}>
                  {column.cell(row)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {table.more !== undefined && (
        <div className="row table-more no-print">
          <MoreButton onMore={table.more} />
          {sorted.length > shown && (
            <span className="quiet">{t('progress', { done: shown, total: sorted.length })}</span>
          )}
        </div>
      )}
      {csvName !== undefined && (
        <button type="button" className="link no-print" onClick={save}>
          {t('csv')}
        </button>
      )}
    </div>
  );
};
