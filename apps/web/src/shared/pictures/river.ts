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

/**
 * Keeps the widest nodes and gathers the rest of each kind into one, so that the picture stays
 * readable; the table beside it always lists everything. A flow that would close a circle after the
 * gathering is left out of the picture, because a river can't be drawn with one.
 */
export const drawable = (
  river: River,
  most: number,
  gathered: (kind: string, count: number) => string,
): DrawnRiver => {
  const weight = new Map<string, number>();
  for (const { from, to, grams } of river.flows) {
    weight.set(from, Math.max(weight.get(from) ?? 0, 0) + Number(grams));
    weight.set(to, Math.max(weight.get(to) ?? 0, 0) + Number(grams));
  }
  const ranked = [...river.nodes].sort(
    (a, b) => (weight.get(b.key) ?? 0) - (weight.get(a.key) ?? 0),
  );
  const kept = new Set(ranked.slice(0, most).map(({ key }) => key));
  const keyOf = new Map(
    river.nodes.map((node) => [node.key, kept.has(node.key) ? node.key : `others:${node.kind}`]),
  );
  const nodes = new Map<string, RiverNode & { others: number }>();
  for (const node of river.nodes) {
    const key = keyOf.get(node.key) ?? node.key;
    const before = nodes.get(key);
    const others = key === node.key ? 0 : (before?.others ?? 0) + 1;
    const name = key === node.key ? node.name : gathered(node.kind, others);
    nodes.set(key, { key, name, kind: node.kind, others });
  }
  const order = [...nodes.keys()];
  const flows = new Map<string, { source: string; target: string; value: number }>();
  for (const { from, to, grams } of river.flows) {
    const source = keyOf.get(from);
    const target = keyOf.get(to);
    if (source === undefined || target === undefined || source === target) continue;
    const key = `${source}→${target}`;
    const before = flows.get(key)?.value ?? 0;
    flows.set(key, { source, target, value: before + Number(grams) });
  }
  const acyclic = withoutCircles([...flows.values()]);
  const used = order.filter((key) => acyclic.some((f) => f.source === key || f.target === key));
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

/** Columns of the drawing: the longest way from a source to an end, in nodes. */
export const columnsOf = ({ nodes, links }: DrawnRiver): number => {
  const depth = nodes.map(() => 1);
  let moved = true;
  while (moved) {
    moved = false;
    for (const { source, target } of links) {
      const next = (depth[source] ?? 1) + 1;
      if (next > (depth[target] ?? 1)) {
        depth[target] = next;
        moved = true;
      }
    }
  }
  return Math.max(1, ...depth);
};
