import { randomUUID } from 'node:crypto';
import { Client } from 'pg';

interface Loss {
  readonly kind: string;
  readonly grams: string;
  readonly lot?: string;
}

interface Made {
  readonly code: string;
  readonly item: string;
  readonly grams: string;
  readonly quantity?: string;
}

interface Making {
  readonly code: string;
  readonly kind?: 'cook' | 'charge' | 'cast' | 'pack';
  readonly at: string;
  readonly tank?: string;
  readonly draws: readonly (readonly [lot: string, quantity: string, grams?: string])[];
  readonly losses?: readonly Loss[];
  readonly outputs?: readonly Made[];
  readonly open?: boolean;
}

/**
 * Writes a workshop's history straight into the tables, through the database's own guards and
 * triggers, for tests of what is read from it. Names are codes; ids are kept inside.
 */
export class Books {
  private readonly ids = new Map<string, string>();
  private constructor(
    private readonly client: Client,
    private readonly userId: string,
  ) {}

  static async open(databaseUrl: string): Promise<Books> {
    const client = new Client({ connectionString: databaseUrl });
    await client.connect();
    const found = await client.query<{ id: string }>('SELECT id FROM app_user LIMIT 1');
    const books = new Books(client, found.rows[0]?.id ?? randomUUID());
    if (found.rows.length === 0) {
      await client.query(
        `INSERT INTO app_user (id, name, role, password_hash) VALUES ($1, 'A maker', 'maker', '-')`,
        [books.userId],
      );
    }
    return books;
  }

  async close(): Promise<void> {
    await this.client.end();
  }

  /** The id behind a name given to this class before. */
  id(name: string): string {
    const id = this.ids.get(name);
    if (id === undefined) throw new Error(`nothing here is called ${name}`);
    return id;
  }

  query(text: string, values: readonly unknown[] = []) {
    return this.client.query<Record<string, unknown>>(text, [...values]);
  }

  async supplier(name: string): Promise<void> {
    await this.insert('supplier', name, { name });
  }

  async customer(name: string): Promise<void> {
    await this.insert('customer', name, { name });
  }

  async place(name: string): Promise<void> {
    await this.insert('place', name, { name, kind: 'fridge', tag: `tag ${name}` });
  }

  /** With a recipe of one version when it is something that is made here. */
  async item(
    name: string,
    kind = 'ingredient',
    unit = kind === 'piece' || kind === 'box' ? 'pc' : 'g',
  ) {
    await this.insert('item', name, { name, kind, unit });
    if (kind === 'ingredient' || kind === 'packaging') return;
    await this.insert('recipe', `recipe ${name}`, { item_id: this.id(name) });
    await this.insert('recipe_version', `version ${name}`, {
      recipe_id: this.id(`recipe ${name}`),
      number: 1,
    });
  }

  async received(
    code: string,
    item: string,
    grams: string,
    supplier: string,
    at: string,
    place?: string,
  ) {
    const unit = await this.unitOf(item);
    const specification = `specification ${item} ${supplier}`;
    if (!this.ids.has(specification)) {
      await this.insert('specification', specification, {
        item_id: this.id(item),
        supplier_id: this.id(supplier),
        number: 1,
        state: 'approved',
        label_names: '{}',
        ingredients: '[]',
        composition: '{}',
        nutrition: '{}',
        approved_by_id: this.userId,
        approved_at: at,
      });
    }
    await this.insert('delivery', `delivery ${code}`, {
      supplier_id: this.id(supplier),
      received_on: at.slice(0, 10),
      received_at: at,
      user_id: this.userId,
    });
    await this.insert('delivery_line', `line ${code}`, {
      delivery_id: this.id(`delivery ${code}`),
      position: 1,
      item_id: this.id(item),
      supplier_lot_code: `S-${code}`,
      quantity: grams,
      price: '1',
      accepted: true,
    });
    await this.insert('lot', code, {
      code,
      item_id: this.id(item),
      unit,
      specification_id: this.id(specification),
      delivery_line_id: this.id(`line ${code}`),
      made_quantity: grams,
      made_mass_g: unit === 'g' ? grams : '0',
      made_cost: '0',
      made_on: at.slice(0, 10),
      place_id: place === undefined ? null : this.id(place),
      created_at: at,
      user_id: this.userId,
    });
  }

  async tank(name: string, item: string): Promise<void> {
    await this.insert('tank', name, {
      name,
      tag: `tag ${name}`,
      item_id: this.id(item),
      capacity_g: '12000',
    });
  }

  async emptied(tank: string, at: string, cleaned: boolean): Promise<void> {
    await this.insert('tank_emptying', `${tank} ${at}`, {
      tank_id: this.id(tank),
      heel_g: '0',
      outcome: 'nothing_left',
      cleaned,
      at,
      user_id: this.userId,
    });
  }

  async mould(tag: string): Promise<void> {
    if (!this.ids.has('design')) {
      await this.insert('mould_design', 'design', {
        name: 'dome',
        shape: 'dome',
        rows: 3,
        columns: 8,
      });
    }
    await this.insert('mould', tag, { tag, design_id: this.id('design') });
  }

  async inspected(tag: string, at: string, result: 'sound' | 'chipped'): Promise<void> {
    await this.insert('mould_inspection', `${tag} ${at}`, {
      mould_id: this.id(tag),
      result,
      at,
      user_id: this.userId,
    });
  }

  async cast(batch: string, mould: string, at: string): Promise<void> {
    await this.insert('mould_use', `${batch} ${mould}`, {
      batch_id: this.id(batch),
      mould_id: this.id(mould),
      cavities_filled: 24,
      reject_cavities: [],
      at,
      user_id: this.userId,
    });
  }

  /** A whole making in one transaction: opened, drawn, made, lost, finished. */
  async made(making: Making): Promise<void> {
    const [first] = making.outputs ?? [];
    await this.client.query('BEGIN');
    await this.insert('batch', making.code, {
      code: making.code,
      kind: making.kind ?? 'cook',
      recipe_version_id:
        first && making.kind !== 'charge' ? this.id(`version ${first.item}`) : null,
      tank_id: making.tank === undefined ? null : this.id(making.tank),
      operator_id: this.userId,
      opened_at: making.at,
    });
    for (const [lot, quantity, grams] of making.draws)
      await this.draw(making, lot, quantity, grams);
    for (const loss of making.losses ?? []) {
      await this.insert('batch_loss', randomUUID(), {
        batch_id: this.id(making.code),
        kind: loss.kind,
        mass_g: loss.grams,
        lot_id: loss.lot === undefined ? null : this.id(loss.lot),
        at: making.at,
        user_id: this.userId,
      });
    }
    if (making.open !== true) {
      for (const made of making.outputs ?? []) await this.output(making, made);
      await this.client.query(`UPDATE batch SET state = 'finished', ended_at = $2 WHERE id = $1`, [
        this.id(making.code),
        making.at,
      ]);
    }
    await this.client.query('COMMIT');
  }

  async sent(
    code: string,
    customer: string | null,
    on: string,
    lines: Record<string, readonly [string, string]>,
  ) {
    await this.insert('dispatch', code, {
      code,
      customer_id: customer === null ? null : this.id(customer),
      sent_on: on,
      at: `${on}T12:00:00Z`,
      user_id: this.userId,
    });
    for (const [position, [lot, [quantity, grams]]] of Object.entries(lines).entries()) {
      await this.insert('dispatch_line', randomUUID(), {
        dispatch_id: this.id(code),
        position: position + 1,
        lot_id: this.id(lot),
        quantity,
        mass_g: grams,
        cost: '0',
      });
    }
  }

  async moved(
    lot: string,
    kind: 'wasted' | 'sampled' | 'counted' | 'returned',
    quantity: string,
    grams: string,
  ) {
    await this.insert('movement', randomUUID(), {
      lot_id: this.id(lot),
      quantity,
      mass_g: grams,
      cost: '0',
      kind,
      reason: 'a test',
      user_id: this.userId,
    });
  }

  /** The opposite entry of a batch's draw from a lot, with its loss of weight as a loss undone. */
  async undraw(batch: string, lot: string, reason: string): Promise<void> {
    await this.client.query(
      `INSERT INTO draw (id, batch_id, lot_id, role, quantity, mass_g, cost, reverses_id, reason, user_id)
       SELECT gen_random_uuid(), batch_id, lot_id, role, -quantity, -mass_g, -cost, id, $3, user_id
       FROM draw WHERE batch_id = $1 AND lot_id = $2 AND reverses_id IS NULL`,
      [this.id(batch), this.id(lot), reason],
    );
  }

  private async draw(making: Making, lot: string, quantity: string, grams?: string): Promise<void> {
    await this.insert('draw', randomUUID(), {
      batch_id: this.id(making.code),
      lot_id: this.id(lot),
      role: 'base',
      quantity,
      mass_g: grams ?? quantity,
      cost: '0',
      at: making.at,
      user_id: this.userId,
    });
  }

  private async output(making: Making, made: Made): Promise<void> {
    await this.insert('lot', made.code, {
      code: made.code,
      item_id: this.id(made.item),
      unit: await this.unitOf(made.item),
      recipe_version_id: making.kind === 'charge' ? null : this.id(`version ${made.item}`),
      batch_id: this.id(making.code),
      output_role: 'product',
      made_quantity: made.quantity ?? made.grams,
      made_mass_g: made.grams,
      made_cost: '0',
      made_on: making.at.slice(0, 10),
      created_at: making.at,
      user_id: this.userId,
    });
  }

  private async unitOf(item: string): Promise<string> {
    const found = await this.query('SELECT unit FROM item WHERE id = $1', [this.id(item)]);
    return String(found.rows[0]?.['unit']);
  }

  private async insert(
    table: string,
    name: string,
    columns: Record<string, unknown>,
  ): Promise<void> {
    const id = randomUUID();
    this.ids.set(name, id);
    const names = ['id', ...Object.keys(columns)];
    await this.client.query(
      `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map((_, i) => `$${String(i + 1)}`).join(', ')})`,
      [id, ...Object.values(columns)],
    );
  }
}
