import {
  Bar,
  BarChart,
  CartesianGrid,
  LabelList,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts';
import { addExact } from '../formats/exact';
import { useFormats } from '../formats/use-formats';
import { Picture } from '../kit/picture';
import { tokens } from '../kit/tokens';
import { useMessages } from '../language/catalogue';
import { pictureMessages } from './messages';

export interface CostStep {
  readonly key: string;
  readonly name: string;
  readonly amount: string;
  /** A subtotal starts from the ground again. */
  readonly total?: boolean;
}

const withGround = (steps: readonly CostStep[]) => {
  let running = '0';
  return steps.map((step) => {
    const start = step.total === true ? '0' : running;
    running = step.total === true ? step.amount : addExact(running, step.amount);
    return { ...step, start, end: running };
  });
};

/** How a price builds up, step by step. */
export const Waterfall = (props: {
  readonly title: string;
  readonly steps: readonly CostStep[];
  readonly csvName: string;
}) => {
  const t = useMessages(pictureMessages);
  const formats = useFormats();
  const rows = withGround(props.steps);
  const data = rows.map((row) => ({
    ...row,
    shown: formats.money(row.amount),
    // The bar takes its colour from its row.
    fill: row.total === true ? tokens.ink : tokens.accent,
    span: [Number(row.start), Number(row.end)].sort((a, b) => a - b),
  }));
  return (
    <Picture
      title={props.title}
      summary={rows.map(({ name, amount }) => `${name} ${formats.money(amount)}`).join(', ')}
      rows={rows}
      rowKey={({ key }) => key}
      csvName={props.csvName}
      columns={[
        { key: 'name', title: t('part'), cell: (row) => row.name, text: (row) => row.name },
        {
          key: 'amount',
          title: t('amount'),
          numeric: true,
          cell: (row) => formats.money(row.amount, 4),
          text: (row) => row.amount,
        },
        {
          key: 'end',
          title: t('runningTotal'),
          numeric: true,
          cell: (row) => formats.money(row.end, 4),
          text: (row) => row.end,
        },
      ]}
    >
      <div aria-hidden="true">
        <ResponsiveContainer width="100%" height={rows.length * 44 + 30}>
          <BarChart
            accessibilityLayer={false}
            data={data}
            layout="vertical"
            margin={{ top: 0, right: 90, bottom: 0, left: 0 }}
          >
            <CartesianGrid horizontal={false} stroke="var(--line)" />
            <XAxis
              type="number"
              stroke="var(--muted)"
              tickFormatter={(tick: number) => formats.money(String(tick))}
            />
            <YAxis
              type="category"
              dataKey="name"
              width={150}
              stroke="var(--ink)"
              tickLine={false}
            />
            <Bar dataKey="span" isAnimationActive={false} barSize={24}>
              <LabelList dataKey="shown" position="right" fill={tokens.ink} />
            </Bar>
          </BarChart>
        </ResponsiveContainer>
      </div>
    </Picture>
  );
};
