import { useMemo } from 'react';
import { Rectangle, ResponsiveContainer, Sankey, Tooltip } from 'recharts';
import { useFormats } from '../formats/use-formats';
import { Picture } from '../kit/picture';
import { tokens } from '../kit/tokens';
import { useMessages } from '../language/catalogue';
import { pictureMessages } from './messages';
import { drawable, type River } from './river';
import { columnsOf } from './river-columns';

const MOST_NODES = 36;

interface NodeShape {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly payload: { readonly name: string; readonly key?: string; readonly depth?: number };
}

interface Props {
  readonly title: string;
  readonly river: River;
  /** The lot in question, in the middle. */
  readonly middle: string;
  readonly gathered: (kind: string, count: number) => string;
  readonly csvName: string;
  readonly onOpen?: (key: string) => void;
}

/** A wide river is moved so that the lot in question is in sight; the page itself stays. */
const showInFrame = (node: SVGGElement | null): void => {
  const frame = node?.closest('.picture-body');
  if (node === null || frame === null || frame === undefined) return;
  // Its place is known when the picture has been laid out.
  requestAnimationFrame(() => {
    const from = node.getBoundingClientRect().left - frame.getBoundingClientRect().left;
    frame.scrollLeft += from - frame.clientWidth / 2;
  });
};

const nodeWith =
  (middle: string, most: number, onOpen: ((key: string) => void) | undefined) =>
  ({ x, y, width, height, payload }: NodeShape) => {
    const asked = payload.key === middle;
    const cut = (text: string): string =>
      text.length > most ? `${text.slice(0, most - 1)}…` : text;
    const [name = '', detail] = payload.name.split('\n');
    const at = x + width + 6;
    const middleY = y + height / 2;
    return (
      <g
        ref={asked ? showInFrame : undefined}
        onClick={() => payload.key !== undefined && onOpen?.(payload.key)}
        style={{ cursor: onOpen === undefined ? 'default' : 'pointer' }}
      >
        <Rectangle
          x={x}
          y={y}
          width={width}
          height={Math.max(height, 2)}
          fill={asked ? tokens.ink : tokens.accent}
        />
        <text
          x={at}
          y={detail === undefined ? middleY : middleY - 8}
          textAnchor="start"
          dominantBaseline="middle"
          fontSize={13}
          fontWeight={asked ? 700 : 400}
          fill={tokens.ink}
          stroke={tokens.sheet}
          strokeWidth={3}
          paintOrder="stroke"
        >
          <tspan x={at}>{cut(name)}</tspan>
          {detail !== undefined && (
            <tspan x={at} dy={16}>
              {detail}
            </tspan>
          )}
        </text>
      </g>
    );
  };

/** The trace as a river of grams, from suppliers on the left to customers on the right. */
export const RiverPicture = (props: Props) => {
  const { river, gathered, middle } = props;
  const t = useMessages(pictureMessages);
  const formats = useFormats();
  const drawn = useMemo(
    () => drawable(river, MOST_NODES, gathered, middle),
    [river, gathered, middle],
  );
  const names = new Map(river.nodes.map(({ key, name }) => [key, name]));
  const nameOf = (key: string): string => (names.get(key) ?? key).replace('\n', ' ');
  const columns = columnsOf(drawn);
  const height = Math.max(260, drawn.nodes.length * 38);
  const width = Math.max(1100, columns * 120);
  // About seven pixels a letter, in the room between two columns; the last has as much beside it.
  const room = Math.floor(width / columns);
  const most = Math.max(8, Math.floor(room / 7.5) - 2);
  return (
    <Picture
      title={props.title}
      summary={t('riverSummary', {
        name: nameOf(middle),
        places: formats.number(String(river.nodes.length)),
        flows: formats.number(String(river.flows.length)),
      })}
      rows={river.flows}
      rowKey={(row, position) => `${row.from}-${row.to}-${String(position)}`}
      csvName={props.csvName}
      columns={[
        {
          key: 'from',
          title: t('from'),
          cell: (row) => nameOf(row.from),
          text: (row) => nameOf(row.from),
        },
        { key: 'to', title: t('to'), cell: (row) => nameOf(row.to), text: (row) => nameOf(row.to) },
        {
          key: 'grams',
          title: t('grams'),
          numeric: true,
          cell: (row) => formats.number(row.grams),
          text: (row) => row.grams,
        },
      ]}
    >
      {drawn.links.length > 0 && (
        <div aria-hidden="true" className="picture-wide" style={{ width }}>
          <ResponsiveContainer width="100%" height={height}>
            <Sankey
              accessibilityLayer={false}
              data={{ nodes: [...drawn.nodes], links: [...drawn.links] }}
              nodeWidth={10}
              nodePadding={24}
              margin={{ top: 12, right: room - 10, bottom: 20, left: 4 }}
              link={{ stroke: tokens.accent, strokeOpacity: 0.22 }}
              node={nodeWith(middle, most, props.onOpen)}
            >
              <Tooltip formatter={(value) => formats.mass(Number(value).toFixed(1))} />
            </Sankey>
          </ResponsiveContainer>
        </div>
      )}
    </Picture>
  );
};
