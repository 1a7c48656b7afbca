import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useWaitingBookings } from '../../app/connection-strip';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { InfusionPlan } from '../../shared/infusions/infusion-plan';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { kitMessages } from '../../shared/kit/messages';
import { Page, Section, State } from '../../shared/kit/page';
import { PaperLink } from '../../shared/kit/paper-link';
import { useWakeLock } from '../../shared/kit/wake-lock';
import { ScanField } from '../../shared/scan/scan-field';
import { useScans } from '../../shared/scan/use-scans';
import { AbandonDialog } from './abandon-dialog';
import { AtItsPlace } from './at-its-place';
import { BatchDraws } from './batch-draws';
import { BatchLines } from './batch-lines';
import { BatchLosses } from './batch-losses';
import { BatchOutputs } from './batch-outputs';
import { BatchParts } from './batch-parts';
import { BatchReadings } from './batch-readings';
import { BatchTrays, TrayDialog } from './batch-trays';
import { CorrectDialog } from './correct-dialog';
import { correctMessages } from './correct-messages';
import { DrawDialog } from './draw-dialog';
import { FinishDialog } from './finish-dialog';
import { PartDialog } from './part-dialog';
import { partsMessages } from './parts-messages';
import { batchMessages } from '../../shared/batches/messages';
import { SplitDialog } from './split-dialog';
import { laneOf, type Batch } from './use-batch-booking';

type Line = components['schemas']['BatchLineView'];
type Open =
  | { readonly kind: 'draw'; readonly line: Line | undefined; readonly lot: string | undefined }
  | { readonly kind: 'tray'; readonly tag: string }
  | { readonly kind: 'finish' | 'abandon' | 'split' | 'correct' | 'part' };

/** A scan at the bench: a lot of one of the lines, a tray, or a lot outside the recipe. */
const openingOf = (batch: Batch, text: string): Open => {
  const line = batch.lines.find(({ proposedLots }) =>
    proposedLots.some(({ lotCode }) => lotCode === text),
  );
  if (line !== undefined) return { kind: 'draw', line, lot: text };
  if (batch.kind === 'cast' && /^M/i.test(text)) return { kind: 'tray', tag: text };
  return { kind: 'draw', line: undefined, lot: text };
};

/** Until everything is weighed in, weighing is the next thing to do and finishing is not. */
const finishLook = ({ lines }: Batch): 'filled' | 'default' =>
  lines.every(
    ({ drawnQuantity, plannedQuantity }) => compareExact(drawnQuantity, plannedQuantity) >= 0,
  )
    ? 'filled'
    : 'default';

/** A making takes another part as long as its first part is open. */
const takesParts = ({ kind, state, parts }: Batch): boolean =>
  (kind === 'cook' || kind === 'cast') && (parts?.parts[0]?.state ?? state) === 'open';

const Waiting = ({ batch }: { readonly batch: Batch }) => {
  const t = useMessages(batchMessages);
  const waiting = useWaitingBookings()?.filter(({ lane }) => lane === laneOf(batch)) ?? [];
  if (waiting.length === 0) return null;
  return (
    <ul className="plain-list caution" role="status">
      {waiting.map((booking) => (
        <li key={booking.key}>{t('waitingHere', { what: booking.label })}</li>
      ))}
    </ul>
  );
};

/** Only while it is cooked is there something to plan. */
const PlannedInfusion = ({ batch }: { readonly batch: Batch }) =>
  batch.kind === 'cook' && batch.state === 'open' ? (
    <InfusionPlan
      lines={batch.lines.map((line) => ({ ...line, quantity: line.plannedQuantity }))}
    />
  ) : null;

/** What goes beyond this pot: another one beside it, or a correction once it is finished. */
const Beyond = (props: {
  readonly batch: Batch;
  readonly onOpen: (kind: 'correct' | 'part') => void;
}) => {
  const { batch, onOpen } = props;
  const correct = useMessages(correctMessages);
  const parts = useMessages(partsMessages);
  const maker = useMay('maker');
  const mayCorrect = maker && batch.state === 'finished';
  const mayPart = maker && takesParts(batch);
  if (!mayCorrect && !mayPart) return null;
  return (
    <div className="row section no-print">
      {mayCorrect && (
        <Button variant="default" onClick={() => onOpen('correct')}>
          {correct('correct')}
        </Button>
      )}
      {mayPart && (
        <Button variant="default" onClick={() => onOpen('part')}>
          {parts(batch.kind === 'cast' ? 'cast' : 'cook')}
        </Button>
      )}
    </div>
  );
};

const Opened = (props: {
  readonly batch: Batch;
  readonly open: Open;
  readonly onClose: () => void;
}) => {
  const { batch, open, onClose } = props;
  return (
    <>
      {open.kind === 'draw' && (
        <DrawDialog batch={batch} line={open.line} scannedLot={open.lot} onClose={onClose} />
      )}
      {open.kind === 'tray' && <TrayDialog batch={batch} tag={open.tag} onClose={onClose} />}
      {open.kind === 'abandon' && <AbandonDialog batch={batch} onClose={onClose} />}
      {open.kind === 'correct' && <CorrectDialog batch={batch} onClose={onClose} />}
      {open.kind === 'part' && <PartDialog batch={batch} onClose={onClose} />}
      {open.kind === 'split' && <SplitDialog batch={batch} onClose={onClose} />}
      {open.kind === 'finish' && <FinishDialog batch={batch} onClose={onClose} />}
    </>
  );
};

const Bench = ({ batch }: { readonly batch: Batch }) => {
  const t = useMessages(batchMessages);
  const kit = useMessages(kitMessages);
  const mayBook = useMay('maker', 'seller') && batch.state === 'open';
  const [open, setOpen] = useState<Open>();
  const awake = useWakeLock(batch.state === 'open');
  const take = (text: string): void => setOpen(openingOf(batch, text));
  useScans(take, mayBook && open === undefined);
  const close = (): void => setOpen(undefined);
  return (
    <>
      {mayBook && (
        <div className="row section no-print">
          <ScanField id="bench-scan" label={t('scanHere')} onText={take} />
          <Button size="lg" variant={finishLook(batch)} onClick={() => setOpen({ kind: 'finish' })}>
            {t('finish')}
          </Button>
          {batch.kind === 'pack' && (
            <Button variant="default" onClick={() => setOpen({ kind: 'split' })}>
              {t('split')}
            </Button>
          )}
          <Button variant="default" onClick={() => setOpen({ kind: 'abandon' })}>
            {t('abandon')}
          </Button>
          {awake && <span className="quiet">{kit('screenOn')}</span>}
        </div>
      )}
      <Beyond batch={batch} onOpen={(kind) => setOpen({ kind })} />
      <Waiting batch={batch} />
      <BatchParts batch={batch} />
      <BatchOutputs batch={batch} />
      {batch.lines.length > 0 && (
        <Section title={t('linesTitle')}>
          <BatchLines
            lines={batch.lines}
            onDraw={mayBook ? (line) => setOpen({ kind: 'draw', line, lot: undefined }) : undefined}
          />
        </Section>
      )}
      <PlannedInfusion batch={batch} />
      {batch.kind === 'cast' && (
        <BatchTrays
          batch={batch}
          onAdd={mayBook ? () => setOpen({ kind: 'tray', tag: '' }) : undefined}
        />
      )}
      <BatchReadings batch={batch} mayBook={mayBook} />
      <BatchLosses batch={batch} mayBook={mayBook} />
      <BatchDraws batch={batch} mayBook={mayBook} />
      {open !== undefined && <Opened batch={batch} open={open} onClose={close} />}
    </>
  );
};

const BatchPage = () => {
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const id = useParam('id');
  const batch = useRead('/api/batches/{id}', { params: { path: { id } } });
  return (
    <Loaded query={batch}>
      {(data) => (
        <AtItsPlace batch={data}>
          <Page
            title={data.itemName}
            lead={
              <span className="row">
                {word(data.kind)} <code>{data.code}</code>
                <State tone={data.state === 'finished' ? 'good' : 'plain'}>
                  {word(data.state)}
                </State>
                {data.part !== null && <span>{t('part', { ...data.part })}</span>}
                {data.plannedQuantity !== null &&
                  `${formats.label(t('planned'))} ${formats.quantity(data.plannedQuantity, data.unit)}`}
                <span>
                  {data.operatorName} · {formats.instant(data.openedAt)}
                </span>
              </span>
            }
            actions={
              <>
                <PaperLink href={`/api/batches/${id}/sheet.pdf`}>{t('sheet')}</PaperLink>
                {data.outputs[0] !== undefined && (
                  <Link
                    to="/trace/lots/$code"
                    params={{ code: data.outputs[0].lotCode }}
                    className="button-link"
                  >
                    {t('trace')}
                  </Link>
                )}
              </>
            }
          >
            <Bench key={data.id} batch={data} />
          </Page>
        </AtItsPlace>
      )}
    </Loaded>
  );
};

export default BatchPage;
