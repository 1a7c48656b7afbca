import { drawable, type River } from './river';
import { columnsOf } from './river-columns';

const river: River = {
  nodes: ['cream', 'sugar', 'salt', 'ganache', 'piece'].map((key) => ({
    key,
    name: key,
    kind: ['cream', 'sugar', 'salt'].includes(key) ? 'ingredient' : key,
  })),
  flows: [
    { from: 'cream', to: 'ganache', grams: '500' },
    { from: 'sugar', to: 'ganache', grams: '100' },
    { from: 'salt', to: 'ganache', grams: '2' },
    { from: 'ganache', to: 'piece', grams: '602' },
  ],
};

const gathered = (kind: string, count: number) => `${String(count)} × ${kind}`;

describe('a river that can be drawn', () => {
  it('keeps every gram when it gathers the small ones', () => {
    const drawn = drawable(river, 3, gathered);
    const total = drawn.links.reduce((sum, { value }) => sum + value, 0);
    expect(total).toBe(1204);
    expect(drawn.nodes.map(({ name }) => name)).toContain('2 × ingredient');
  });

  it('keeps what the picture is about, however small', () => {
    const named = drawable(river, 2, gathered, 'salt').nodes.map(({ key }) => key);
    expect(named).toContain('salt');
    expect(drawable(river, 2, gathered).nodes.map(({ key }) => key)).not.toContain('salt');
  });

  it('draws everything when there is room', () => {
    const drawn = drawable(river, 10, gathered);
    expect(drawn.nodes).toHaveLength(5);
    expect(drawn.links).toHaveLength(4);
    expect(columnsOf(drawn)).toBe(3);
  });

  it('never holds a circle, which the drawing could not end', () => {
    const circle: River = {
      nodes: river.nodes,
      flows: [...river.flows, { from: 'piece', to: 'ganache', grams: '5' }],
    };
    const drawn = drawable(circle, 10, gathered);
    expect(drawn.links).toHaveLength(4);
  });
});
