import type { DrawnRiver } from './river';

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
