import { Decimal } from '../../apps/api/src/domain/units';
import type { DemoClient } from './demo-client';
import type { MasterData } from './master-data';
import {
  BOXES,
  type DemoBox,
  type DemoFilling,
  type DemoPiece,
  FILLINGS,
  PIECES,
  SECOND_VERSIONS,
} from './recipes';
import { MOULD_DESIGNS } from './workshop';

const COUVERTURE = { dark: 'Dark couverture 64 %', milk: 'Milk couverture 38 %' } as const;

interface Line {
  readonly itemId: string;
  readonly quantity: string;
  readonly role: string;
}

const line = (data: MasterData, item: string, quantity: Decimal | string, role: string): Line => ({
  itemId: data.items.get(item) ?? '',
  quantity: new Decimal(quantity).toFixed(3),
  role,
});

/** Each loss as a share of what goes into the step. */
const lossesOf = (filling: DemoFilling): object[] => {
  const total = filling.lines.reduce((sum, row) => sum.plus(row.quantity), new Decimal(0));
  const share = (massG: string): string =>
    new Decimal(massG).dividedBy(total).times(100).toFixed(3);
  return [
    { step: 'Cook', kind: 'steam', massG: filling.steamG },
    { step: 'Strain', kind: 'held_back', massG: filling.heldBackG },
    { step: 'Fill the bags', kind: 'scrapings', massG: filling.scrapingsG },
  ].flatMap(({ step, kind, massG }) =>
    massG === undefined ? [] : [{ step, kind, percent: share(massG) }],
  );
};

const step = (
  title: string,
  text: string,
  rest: { restHours?: string; checks?: object[] } = {},
) => ({
  title,
  text,
  restHours: rest.restHours ?? null,
  checks: rest.checks ?? [],
});

const FILLING_STEPS = [
  step('Weigh and cook', 'In the order of the lines.'),
  step('Rest', 'Covered, in the workroom, until it is set enough to pipe.', { restHours: '12' }),
];

/** Working temperatures of the demo's two couvertures, as their makers are said to state them. */
export const WORKING_TEMPS_C = { dark: ['31', '32'], milk: ['29', '30'] } as const;

const pieceSteps = (chocolate: DemoPiece['chocolate']): object[] => [
  step('Colour and shell', 'Thin, from the tank.', {
    checks: [
      {
        measure: 'temp_c',
        low: WORKING_TEMPS_C[chocolate][0],
        high: WORKING_TEMPS_C[chocolate][1],
        unit: '°C',
      },
    ],
  }),
  step('Fill', 'Two millimetres below the rim.'),
  step('Crystallise overnight', 'In the workroom, dry.', { restHours: '12' }),
  step('Cap and demould', 'Count the rejects, tray by tray.'),
];

const fillingBody = (data: MasterData, filling: DemoFilling): object => {
  return {
    yieldGrams: filling.yieldMassG,
    steps: FILLING_STEPS,
    expectedLosses: lossesOf(filling),
    shelfLifeDays: filling.lifeDays,
    shelfLifeBasis: 'validated',
    shelfLifeDocument: 'Storage test of the workshop (invented)',
    dateKind: filling.dateKind ?? 'best_before',
    lifeAfterThawDays: filling.lifeAfterThawDays ?? null,
    note: filling.note ?? null,
    labourMinutes: filling.minutes,
    labourRole: 'maker',
    lines: filling.lines.map((row) => line(data, row.item, row.quantity, row.role)),
  };
};

/** One tray's worth. */
const pieceBody = (data: MasterData, piece: DemoPiece): object => {
  const { design } = MOULD_DESIGNS[piece.design];
  const cavities = new Decimal(design.rows * design.columns);
  const couverture = COUVERTURE[piece.chocolate];
  return {
    yieldPieces: cavities.toNumber(),
    mouldDesignId: data.designs.get(piece.design),
    steps: pieceSteps(piece.chocolate),
    shelfLifeDays: piece.lifeDays,
    shelfLifeBasis: 'validated',
    shelfLifeDocument: 'Storage test of the workshop (invented)',
    labourMinutes: '14.00',
    labourRole: 'maker',
    lines: [
      line(data, couverture, cavities.times(piece.shellG), 'shell'),
      line(data, piece.filling, cavities.times(piece.fillingG), 'filling'),
      line(data, couverture, cavities.times(piece.capG), 'cap'),
      ...(piece.colour === undefined || piece.colourG === undefined
        ? []
        : [line(data, piece.colour, cavities.times(piece.colourG), 'decoration')]),
    ],
  };
};

const boxBody = (data: MasterData, box: DemoBox): object => ({
  yieldPieces: 1,
  labourMinutes: new Decimal(box.minutes).toFixed(2),
  labourRole: 'packer',
  lines: [
    ...box.slots.map(([piece, count]) => line(data, piece, new Decimal(count), 'slot')),
    ...box.packaging.map((item) => line(data, item, new Decimal(1), 'packaging')),
  ],
});

/** The first version of every recipe. */
export const writeRecipes = async (maker: DemoClient, data: MasterData): Promise<void> => {
  const bodies: [string, object][] = [
    ...FILLINGS.map((row): [string, object] => [row.name, fillingBody(data, row)]),
    ...PIECES.map((row): [string, object] => [row.name, pieceBody(data, row)]),
    ...BOXES.map((row): [string, object] => [row.name, boxBody(data, row)]),
  ];
  for (const [name, body] of bodies) {
    await maker.post(`/items/${data.items.get(name) ?? ''}/recipes`, body);
  }
};

/** What six weeks at the bench taught. */
export const improveRecipes = async (maker: DemoClient, data: MasterData): Promise<void> => {
  for (const row of SECOND_VERSIONS) {
    const itemId = data.items.get(row.name) ?? '';
    await maker.post(`/items/${itemId}/recipes`, fillingBody(data, row));
  }
};
