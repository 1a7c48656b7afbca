import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { Page, State } from '../../shared/kit/page';
import { MouldingNav } from '../../shared/rooms/moulding-nav';
import { LotLink } from '../../shared/lots/lot-table';
import { tankMessages } from './messages';
import { AddTankDialog, EmptyDialog, TopUpDialog, type Tank } from './tank-dialogs';

type Open = { readonly kind: 'top' | 'empty'; readonly tank: Tank } | 'new';

const TankCard = (props: {
  readonly tank: Tank;
  readonly may: boolean;
  readonly onOpen: (open: Open) => void;
}) => {
  const { tank, may, onOpen } = props;
  const t = useMessages(tankMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const lot = tank.currentLot;
  const grams = lot?.onHandGrams ?? '0';
  const share = Math.min(1, Number(grams) / Number(tank.capacityGrams));
  return (
    <li className="sheet stack">
      <h2>{tank.name}</h2>
      <p className="quiet">
        {tank.itemName} · <code>{tank.tag}</code>
      </p>
      <div>
        <span className="figure-large">{formats.mass(grams)}</span>{' '}
        <span className="quiet">
          {t('full', { percent: formats.percent((share * 100).toFixed(0), 0) })}
        </span>
      </div>
      <meter min={0} max={1} value={share} aria-label={t('inIt')} />
      {lot === null ? (
        <State>{t('emptyNow')}</State>
      ) : (
        <p className="row">
          <LotLink code={lot.lotCode} />{' '}
          {lot.held && <State tone="caution">{word('on_hold')}</State>}
        </p>
      )}
      <p className="quiet">
        {formats.label(t('cleanSince'))}{' '}
        {tank.cleanSince === null ? t('never') : formats.instant(tank.cleanSince)}
      </p>
      <div className="row">
        {may && (
          <Button
            aria-label={t('topUpTitle', { tank: tank.name })}
            onClick={() => onOpen({ kind: 'top', tank })}
          >
            {t('topUp')}
          </Button>
        )}
        {may && lot !== null && (
          <Button
            variant="default"
            aria-label={t('emptyTitle', { tank: tank.name })}
            onClick={() => onOpen({ kind: 'empty', tank })}
          >
            {t('empty')}
          </Button>
        )}
        {lot !== null && (
          <Link to="/trace/lots/$code" params={{ code: lot.lotCode }} className="button-link">
            {t('trace')}
          </Link>
        )}
      </div>
    </li>
  );
};

const Tanks = () => {
  const t = useMessages(tankMessages);
  const may = useMay('maker');
  const tanks = useList('/api/tanks');
  const [open, setOpen] = useState<Open>();
  const close = (): void => setOpen(undefined);
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={may && <Button onClick={() => setOpen('new')}>{t('add')}</Button>}
    >
      <MouldingNav />
      <Loaded query={tanks.query}>
        {(rows) =>
          rows.length === 0 ? (
            <p className="quiet">{t('none')}</p>
          ) : (
            <ul className="plain-list columns">
              {rows
                .filter(({ active }) => active)
                .map((tank) => (
                  <TankCard key={tank.id} tank={tank} may={may} onOpen={setOpen} />
                ))}
            </ul>
          )
        }
      </Loaded>
      {open === 'new' && <AddTankDialog onClose={close} />}
      {typeof open === 'object' && open.kind === 'top' && (
        <TopUpDialog tank={open.tank} onClose={close} />
      )}
      {typeof open === 'object' && open.kind === 'empty' && (
        <EmptyDialog tank={open.tank} onClose={close} />
      )}
    </Page>
  );
};

export default Tanks;
