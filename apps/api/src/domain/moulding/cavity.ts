import { ok, refuse, type Result } from '../refusals/result';
import { Decimal } from '../units';
import type { MouldingRefusal } from './refusals';
import { say } from '../words/say';

/**
 * The drawing of one cavity, millimetres. A measured water volume (1 g ≈ 1 mL) corrects the drawing
 * for draft angle and rounded edges: every part is multiplied by measured / drawn.
 */
export type CavityShape =
  | { readonly kind: 'hemisphere'; readonly diameterMm: Decimal }
  | { readonly kind: 'dome'; readonly baseDiameterMm: Decimal; readonly heightMm: Decimal }
  | {
      readonly kind: 'block';
      readonly lengthMm: Decimal;
      readonly widthMm: Decimal;
      readonly heightMm: Decimal;
    };

export interface Cavity {
  readonly shape: CavityShape;
  readonly wallMm: Decimal;
  /** Depth left open above the filling for the cap. */
  readonly capGapMm: Decimal;
  /** Water volume of one cavity as weighed; null when only the drawing is known. */
  readonly measuredVolumeMl: Decimal | null;
}

export interface CavityVolumes {
  readonly cavityMl: Decimal;
  readonly innerMl: Decimal;
  readonly shellMl: Decimal;
  readonly fillingMl: Decimal;
  readonly capMl: Decimal;
}

const PI = Decimal.acos(-1);
const MM3_PER_ML = 1000;

/** Volume of the spherical cap of height `h` of a sphere of radius `r`: πh²(3r − h)/3. */
const sphericalCap = (r: Decimal, h: Decimal): Decimal =>
  PI.times(h).times(h).times(r.times(3).minus(h)).dividedBy(3);

/** Outer, inner and filled volume in mm³; exact but for π at forty digits. */
const drawnVolumes = ({ shape, wallMm: t, capGapMm: g }: Cavity): [Decimal, Decimal, Decimal] => {
  if (shape.kind === 'block') {
    const floor = shape.lengthMm.minus(t.times(2)).times(shape.widthMm.minus(t.times(2)));
    const depth = shape.heightMm.minus(t);
    return [
      shape.lengthMm.times(shape.widthMm).times(shape.heightMm),
      floor.times(depth),
      floor.times(depth.minus(g)),
    ];
  }
  const { radius, height } = sphereOf(shape);
  const inner = radius.minus(t);
  const depth = height.minus(t);
  return [
    sphericalCap(radius, height),
    sphericalCap(inner, depth),
    sphericalCap(inner, depth.minus(g)),
  ];
};

type RoundShape = Exclude<CavityShape, { kind: 'block' }>;

const sphereOf = (shape: RoundShape): { radius: Decimal; height: Decimal } => {
  if (shape.kind === 'hemisphere') {
    const radius = shape.diameterMm.dividedBy(2);
    return { radius, height: radius };
  }
  const a = shape.baseDiameterMm.dividedBy(2);
  const h = shape.heightMm;
  return { radius: a.times(a).plus(h.times(h)).dividedBy(h.times(2)), height: h };
};

const measuresOf = (shape: CavityShape): Decimal[] => {
  if (shape.kind === 'hemisphere') return [shape.diameterMm];
  if (shape.kind === 'dome') return [shape.baseDiameterMm, shape.heightMm];
  return [shape.lengthMm, shape.widthMm, shape.heightMm];
};

/** Least room inside after wall and gap: depth of the cavity, and half its narrowest side. */
const roomFor = (cavity: Cavity): Decimal => {
  const { shape, wallMm, capGapMm } = cavity;
  const depth = (shape.kind === 'block' ? shape.heightMm : sphereOf(shape).height).minus(wallMm);
  const narrow =
    shape.kind === 'block'
      ? Decimal.min(shape.lengthMm, shape.widthMm).dividedBy(2).minus(wallMm)
      : sphereOf(shape).radius.minus(wallMm);
  return Decimal.min(depth.minus(capGapMm), narrow);
};

/** Volumes of shell, filling and cap of one cavity. Refuses walls that leave no room inside. */
export const cavityVolumes = (cavity: Cavity): Result<CavityVolumes, MouldingRefusal> => {
  const numbers = [...measuresOf(cavity.shape), cavity.measuredVolumeMl ?? new Decimal(1)];
  const positive = numbers.every((value) => value.greaterThan(0));
  const walls = [cavity.wallMm, cavity.capGapMm].every((value) => !value.isNegative());
  if (!positive || !walls || !roomFor(cavity).greaterThan(0)) {
    return refuse({
      code: 'cavity-measures-impossible',
      detail: say`These measures leave no room for a filling: the wall and the gap for the cap are thicker than the cavity. Check that every measure is in millimetres.`,
    });
  }
  const [outer, inner, filled] = drawnVolumes(cavity).map((mm3) => mm3.dividedBy(MM3_PER_ML));
  if (!outer || !inner || !filled) throw new Error('a cavity has three volumes');
  const factor = cavity.measuredVolumeMl
    ? cavity.measuredVolumeMl.dividedBy(outer)
    : new Decimal(1);
  return ok({
    cavityMl: outer.times(factor),
    innerMl: inner.times(factor),
    shellMl: outer.minus(inner).times(factor),
    fillingMl: filled.times(factor),
    capMl: inner.minus(filled).times(factor),
  });
};
