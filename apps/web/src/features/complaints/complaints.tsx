import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { type Row, useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useSearchText } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page, State } from '../../shared/kit/page';
import { TraceNav } from '../../shared/rooms/trace-nav';
import { CommonCauses } from './common-causes';
import { complaintMessages } from './messages';
import { RegisterDialog } from './register-dialog';

type Complaint = Row<'/api/complaints'>;

interface TableProps {
  readonly rows: readonly Complaint[];
  readonly ticked: ReadonlySet<string>;
  readonly onTick: (code: string) => void;
  readonly onMore: (() => void) | undefined;
}

const ComplaintTable = ({ rows, ticked, onTick, onMore }: TableProps) => {
  const t = useMessages(complaintMessages);
  const word = useServiceWords();
  const formats = useFormats();
  return (
    <DataTable
      caption={t('title')}
      rows={rows}
      rowKey={({ code }) => code}
      csvName="complaints"
      onMore={onMore}
      empty={t('none')}
      columns={[
        {
          key: 'code',
          title: t('number'),
          cell: (row) => (
            <Link to="/trace/complaints/$code" params={{ code: row.code }}>
              <code>{row.code}</code>
            </Link>
          ),
          text: (row) => row.code,
        },
        {
          key: 'tick',
          title: t('together'),
          cell: (row) => (
            <label className="tick">
              <input
                type="checkbox"
                checked={ticked.has(row.code)}
                onChange={() => onTick(row.code)}
              />
              <span className="unseen">{t('tick', { code: row.code })}</span>
            </label>
          ),
          text: (row) => (ticked.has(row.code) ? '1' : ''),
        },
        {
          key: 'day',
          title: t('day'),
          tight: true,
          cell: (row) => formats.day(row.receivedOn),
          text: (row) => row.receivedOn,
        },
        { key: 'kind', title: t('kind'), cell: (row) => word(row.kind), text: (row) => row.kind },
        {
          key: 'what',
          title: t('what'),
          wide: true,
          cell: (row) => row.what,
          text: (row) => row.what,
        },
        {
          key: 'lot',
          title: t('lot'),
          cell: (row) => <code>{row.lotCode ?? row.codeAsRead}</code>,
          text: (row) => row.lotCode ?? row.codeAsRead,
        },
        {
          key: 'state',
          title: t('state'),
          cell: (row) => (
            <State tone={row.closedAt === null ? 'caution' : 'good'}>
              {row.closedAt === null ? t('open') : t('closed')}
            </State>
          ),
          text: (row) => row.closedAt ?? '',
        },
      ]}
    />
  );
};

const Complaints = () => {
  const t = useMessages(complaintMessages);
  const may = useMay('seller', 'maker');
  const code = useSearchText('code');
  const list = useList('/api/complaints');
  const [open, setOpen] = useState(code !== undefined && may);
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const [compared, setCompared] = useState<readonly string[]>();
  const tick = (one: string): void => {
    const next = new Set(ticked);
    if (!next.delete(one)) next.add(one);
    setTicked(next);
    setCompared(undefined);
  };
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={may && <Button onClick={() => setOpen(true)}>{t('register')}</Button>}
    >
      <TraceNav />
      <Loaded query={list.query}>
        {(rows) => <ComplaintTable rows={rows} ticked={ticked} onTick={tick} onMore={list.more} />}
      </Loaded>
      <div className="section">
        <Button
          variant="default"
          disabled={ticked.size < 2}
          onClick={() => setCompared([...ticked])}
        >
          {t('compare')}
        </Button>
      </div>
      {compared !== undefined && <CommonCauses codes={compared} />}
      {open && <RegisterDialog code={code ?? ''} onClose={() => setOpen(false)} />}
    </Page>
  );
};

export default Complaints;
