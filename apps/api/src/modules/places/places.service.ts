import { Injectable } from '@nestjs/common';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import {
  decodeCursor,
  limitOf,
  type Page,
  pageOf,
  type PageQuery,
} from '../../platform/paging/page';
import { orNotFound } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { nextTag } from '../codes';
import type { ChangePlaceDto, CreatePlaceDto, PlaceView } from './places.dto';
import * as repository from './places.repository';

@Injectable()
export class PlacesService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: PageQuery): Promise<Page<PlaceView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const rows = await repository.listPlaces(this.database.client, limit, after);
    return pageOf(rows, limit, repository.placeView, (row) => [row.name]);
  }

  async get(id: string): Promise<PlaceView> {
    const found = await repository.findPlace(this.database.client, id);
    return repository.placeView(orNotFound(found, 'place', id));
  }

  create(dto: CreatePlaceDto): Promise<PlaceView> {
    return this.transactions.book(async (tx, by) => {
      const place = await repository.createPlace(tx, { ...dto, tag: await nextTag(tx, 'place') });
      noteInJournal(by, {
        action: 'place.created',
        subjectKind: 'place',
        subjectId: place.name,
      });
      return repository.placeView(place);
    });
  }

  change(id: string, seen: number, dto: ChangePlaceDto): Promise<PlaceView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findPlace(tx, id), 'place', id);
      refuseIfStale('place', seen, before.version);
      const after = await repository.changePlace(tx, id, dto);
      noteInJournal(by, {
        action: 'place.changed',
        subjectKind: 'place',
        subjectId: after.name,
        detail: { ...dto },
      });
      return repository.placeView(after);
    });
  }
}
