/** Lots and what flowed between them, ready to be drawn as a river. */
export interface RiverNode {
  readonly key: string;
  readonly name: string;
  readonly kind: string;
}

export interface RiverFlow {
  readonly from: string;
  readonly to: string;
  readonly grams: string;
}

export interface River {
  readonly nodes: readonly RiverNode[];
  readonly flows: readonly RiverFlow[];
}

export interface DrawnRiver {
  readonly nodes: readonly (RiverNode & { readonly others: number })[];
  readonly links: readonly { source: number; target: number; value: number }[];
}

/** Node keys as they are drawn: its own for each of the widest nodes, one for the rest of a kind. */
const drawnKeys = (river: River, most: number, middle: string): ReadonlyMap<string, string> => {
  const weight = new Map<string, number>();
  for (const { from, to, grams } of river.flows) {
    weight.set(from, (weight.get(from) ?? 0) + Number(grams));
    weight.set(to, (weight.get(to) ?? 0) + Number(grams));
  }
  const weightOf = ({ key }: RiverNode): number =>
    key === middle ? Infinity : (weight.get(key) ?? 0);
  const ranked = [...river.nodes].sort((a, b) => weightOf(b) - weightOf(a));
  const kept = new Set(ranked.slice(0, most).map(({ key }) => key));
  return new Map(river.nodes.map(({ key, kind }) => [key, kept.has(key) ? key : `others:${kind}`]));
};

type DrawnNode = DrawnRiver['nodes'][number];

const gatherNodes = (
  river: River,
  keyOf: ReadonlyMap<string, string>,
  gathered: (kind: string, count: number) => string,
): ReadonlyMap<string, DrawnNode> => {
  const nodes = new Map<string, DrawnNode>();
  for (const node of river.nodes) {
    const key = keyOf.get(node.key) ?? node.key;
    if (key === node.key) {
      nodes.set(key, { ...node, others: 0 });
      continue;
    }
    const others = (nodes.get(key)?.others ?? 0) + 1;
    nodes.set(key, { key, name: gathered(node.kind, others), kind: node.kind, others });
  }
  return nodes;
};

const gatherFlows = (river: River, keyOf: ReadonlyMap<string, string>): readonly Flow[] => {
  const flows = new Map<string, Flow>();
  for (const { from, to, grams } of river.flows) {
    const source = keyOf.get(from);
    const target = keyOf.get(to);
    if (source === undefined || target === undefined || source === target) continue;
    const key = `${source}→${target}`;
    flows.set(key, { source, target, value: (flows.get(key)?.value ?? 0) + Number(grams) });
  }
  return [...flows.values()];
};

/**
 * Keeps the widest nodes and gathers the rest of each kind into one, so that the picture stays
 * readable; the table beside it always lists everything. A flow that would close a circle after the
 * gathering is left out of the picture, because a river can't be drawn with one.
 * @param middle key of the node that the picture is about, kept however small it is
 */
export const drawable = (
  river: River,
  most: number,
  gathered: (kind: string, count: number) => string,
  middle = '',
): DrawnRiver => {
  const keyOf = drawnKeys(river, most, middle);
  const nodes = gatherNodes(river, keyOf, gathered);
  const acyclic = withoutCircles(gatherFlows(river, keyOf));
  const flowing = new Set(acyclic.flatMap(({ source, target }) => [source, target]));
  const used = [...nodes.keys()].filter((key) => flowing.has(key));
  return {
    nodes: used.flatMap((key) => nodes.get(key) ?? []),
    links: acyclic.map(({ source, target, value }) => ({
      source: used.indexOf(source),
      target: used.indexOf(target),
      value: Math.max(value, 0.001),
    })),
  };
};

interface Flow {
  readonly source: string;
  readonly target: string;
  readonly value: number;
}

const withoutCircles = (flows: readonly Flow[]): readonly Flow[] => {
  const ahead = new Map<string, string[]>();
  const reaches = (from: string, to: string): boolean => {
    const seen = new Set<string>();
    const open = [from];
    for (let key = open.pop(); key !== undefined; key = open.pop()) {
      if (key === to) return true;
      if (seen.has(key)) continue;
      seen.add(key);
      open.push(...(ahead.get(key) ?? []));
    }
    return false;
  };
  return flows.filter(({ source, target }) => {
    if (reaches(target, source)) return false;
    ahead.set(source, [...(ahead.get(source) ?? []), target]);
    return true;
  });
};
