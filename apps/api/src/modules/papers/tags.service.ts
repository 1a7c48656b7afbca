import { Injectable } from '@nestjs/common';
import {
  lotTags,
  thingTags,
  type PaperContext,
  type PdfHead,
  type ThingTagView,
} from '../../documents';
import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { lotsToTag, lotTagView } from './lot-tags.repository';
import { PaperContexts } from './paper-context';
import type { TagQuery, ThingTagQuery } from './papers.dto';
import { tagStock } from './tag-stock';
import { say } from '../../domain/words/say';

const headOf = (context: PaperContext, title: string) => ({
  title,
  language: context.language,
  author: context.workshop.name,
  createdAt: context.createdAt,
});

/** Tags to stick on cartons, trays, tanks and shelves. */
@Injectable()
export class TagsService {
  constructor(
    private readonly transactions: Transactions,
    private readonly contexts: PaperContexts,
  ) {}

  ofLot(code: string, query: TagQuery): Promise<Buffer> {
    return this.transactions.read((tx) => this.ofLots(tx, { code }, query, ['lot', code]));
  }

  /** One tag for each lot of a delivery that came in; refused lines have none. */
  ofDelivery(id: string, query: TagQuery): Promise<Buffer> {
    return this.transactions.read(async (tx) => {
      orNotFound(await tx.delivery.findUnique({ where: { id } }), 'delivery', id);
      const where = { refused: false, deliveryLine: { deliveryId: id } };
      return this.ofLots(tx, where, query, [say`accepted lot of delivery`, id]);
    });
  }

  private async ofLots(
    tx: Tx,
    where: Prisma.LotWhereInput,
    query: TagQuery,
    [what, id]: readonly [string, string],
  ): Promise<Buffer> {
    const lots = await lotsToTag(tx, where);
    orNotFound(lots[0] ?? null, what, id);
    const context = await this.contexts.of(tx, query);
    const { market } = await tx.workshop.findUniqueOrThrow({ where: { id: 1 } });
    const print = { market, language: context.language, copies: query.copies ?? 1 };
    const views = [];
    for (const lot of lots) views.push(await lotTagView(tx, lot, print));
    const head = headOf(
      context,
      lots
        .map(({ code }) => code)
        .join(', ')
        .slice(0, 200),
    );
    return orRefuse(await lotTags(views, tagStock(query), head));
  }

  ofMoulds(query: ThingTagQuery): Promise<Buffer> {
    return this.ofThings(query, async (tx, tags) => {
      const moulds = await tx.mould.findMany({
        where: tags === undefined ? { state: { not: 'retired' } } : { tag: { in: tags } },
        include: { design: true },
        orderBy: { tag: 'asc' },
      });
      return moulds.map(({ tag, design }) => ({
        code: tag,
        name: design.name,
        lines: [`${design.rows} × ${design.columns}`],
      }));
    });
  }

  ofTanks(query: ThingTagQuery): Promise<Buffer> {
    return this.ofThings(query, async (tx, tags) => {
      const tanks = await tx.tank.findMany({
        where: tags === undefined ? { active: true } : { tag: { in: tags } },
        include: { item: true },
        orderBy: { tag: 'asc' },
      });
      return tanks.map(({ tag, name, item }) => ({ code: tag, name, lines: [item.name] }));
    });
  }

  ofPlaces(query: ThingTagQuery): Promise<Buffer> {
    return this.ofThings(query, async (tx, tags) => {
      const places = await tx.place.findMany({
        where: tags === undefined ? { active: true } : { tag: { in: tags } },
        orderBy: { tag: 'asc' },
      });
      return places.map((place) => ({
        code: place.tag,
        name: place.name,
        lines:
          place.minTempC === null || place.maxTempC === null
            ? []
            : [`${place.minTempC.toFixed()} – ${place.maxTempC.toFixed()} °C`],
      }));
    });
  }

  private ofThings(
    query: ThingTagQuery,
    load: (tx: Tx, tags: string[] | undefined) => Promise<ThingTagView[]>,
  ): Promise<Buffer> {
    const tags = query.tags?.split(',').map((tag) => tag.trim());
    return this.transactions.read(async (tx) => {
      const views = await load(tx, tags);
      const missing = tags?.find((tag) => views.every(({ code }) => code !== tag));
      if (views.length === 0 || missing !== undefined) {
        throw new RefusalError({
          code: 'not-found',
          detail:
            missing === undefined
              ? say`There is nothing yet to print a tag for.`
              : say`There is nothing with the tag ${missing}.`,
        });
      }
      const head: PdfHead = headOf(await this.contexts.of(tx, query), 'Tags');
      return orRefuse(await thingTags(views, tagStock(query), head));
    });
  }
}
