import {
  CartesianGrid,
  ErrorBar,
  ReferenceLine,
  ResponsiveContainer,
  Scatter,
  ScatterChart,
  XAxis,
  YAxis,
} from 'recharts';
import { useFormats } from '../formats/use-formats';
import { Picture } from '../kit/picture';
import { tokens } from '../kit/tokens';
import { useMessages } from '../language/catalogue';
import { pictureMessages } from './messages';

export interface GrowthLimit {
  readonly key: string;
  readonly name: string;
  readonly from: string;
}

interface Props {
  readonly title: string;
  readonly value: string;
  readonly error: string;
  readonly measured: boolean;
  readonly limits: readonly GrowthLimit[];
}

const LEFT = 0.55;

/** Water activity on its scale, with the error either way and where organisms begin to grow. */
export const WaterScale = ({ title, value, error, measured, limits }: Props) => {
  const t = useMessages(pictureMessages);
  const formats = useFormats();
  const name = measured ? t('measured') : t('estimate');
  const shown = `${formats.number(value, 3, 2)} ± ${formats.number(error, 3, 2)}`;
  const rows = [{ key: 'value', name, from: value }, ...limits];
  const inView = limits.filter(({ from }) => Number(from) >= LEFT && Number(from) <= 1);
  return (
    <Picture
      title={title}
      summary={`${formats.label(name)} ${shown}`}
      rows={rows}
      rowKey={({ key }) => key}
      csvName="water-activity"
      columns={[
        { key: 'name', title: t('organism'), cell: (row) => row.name, text: (row) => row.name },
        {
          key: 'from',
          title: t('growsFrom'),
          numeric: true,
          cell: (row) => formats.number(row.from, 3),
          text: (row) => row.from,
        },
      ]}
    >
      <div aria-hidden="true">
        <p className="water-value">
          {name} <span className="figure-large">{shown}</span>
        </p>
        <ResponsiveContainer width="100%" height={90 + inView.length * 20}>
          <ScatterChart
            accessibilityLayer={false}
            margin={{ top: 10 + inView.length * 20, right: 24, bottom: 4, left: 8 }}
          >
            <CartesianGrid horizontal={false} stroke="var(--line)" />
            <XAxis
              type="number"
              dataKey="x"
              domain={[LEFT, 1]}
              ticks={[0.6, 0.7, 0.8, 0.9, 1]}
              tickFormatter={(tick: number) => formats.number(String(tick), 2)}
              stroke="var(--muted)"
            />
            <YAxis type="number" dataKey="y" hide domain={[0, 1]} />
            {inView.map((limit, position) => (
              <ReferenceLine
                key={limit.key}
                x={Number(limit.from)}
                stroke={tokens.caution}
                strokeDasharray="4 3"
                label={{
                  value: limit.name,
                  position: Number(limit.from) < 0.78 ? 'insideTopLeft' : 'insideTopRight',
                  dy: -20 * (position + 1),
                  fill: tokens.caution,
                  fontSize: 13,
                }}
              />
            ))}
            <Scatter
              data={[{ x: Number(value), y: 0.5, error: Number(error) }]}
              fill={tokens.accent}
              isAnimationActive={false}
            >
              <ErrorBar
                dataKey="error"
                direction="x"
                width={12}
                strokeWidth={3}
                stroke={tokens.accent}
                isAnimationActive={false}
              />
            </Scatter>
          </ScatterChart>
        </ResponsiveContainer>
      </div>
    </Picture>
  );
};
