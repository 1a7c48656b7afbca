import { useState, type ReactNode } from 'react';
import { useMessages } from '../language/catalogue';
import { DataTable, type Column } from './data-table';
import { kitMessages } from './messages';

interface Props<R> {
  readonly title: string;
  /** What the picture says, in one sentence, for those who can't see it. */
  readonly summary: string;
  readonly columns: readonly Column<R>[];
  readonly rows: readonly R[];
  readonly rowKey: (row: R, position: number) => string;
  readonly csvName: string;
  readonly children: ReactNode;
}

/** A picture and its twin: the same figures as a table that can be read aloud and saved. */
export const Picture = <R,>(props: Props<R>) => {
  const t = useMessages(kitMessages);
  const [table, setTable] = useState(false);
  return (
    <figure className="picture">
      <figcaption>
        <span>{props.title}</span>
        <span className="twin no-print" role="group" aria-label={props.title}>
          <button type="button" aria-pressed={!table} onClick={() => setTable(false)}>
            {t('asPicture')}
          </button>
          <button type="button" aria-pressed={table} onClick={() => setTable(true)}>
            {t('asTable')}
          </button>
        </span>
      </figcaption>
      {table ? (
        <DataTable
          caption={props.title}
          columns={props.columns}
          rows={props.rows}
          rowKey={props.rowKey}
          csvName={props.csvName}
        />
      ) : (
        // A wide picture scrolls in its frame, which the keyboard must be able to reach.
        <div className="picture-body" tabIndex={0} role="group" aria-label={props.title}>
          <p className="unseen">{props.summary}</p>
          {props.children}
        </div>
      )}
    </figure>
  );
};
