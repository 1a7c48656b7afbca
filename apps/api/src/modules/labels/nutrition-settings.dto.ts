import { Choice, Flag, Grams } from '../../platform/dto';

export class NutritionSettingsDto {
  @Flag({ description: 'Printed also where no duty asks for it' })
  always: boolean;

  @Grams({ nullable: true, positive: true })
  portionGrams: string | null;

  @Flag()
  referenceIntakes: boolean;

  @Flag()
  fibre: boolean;

  @Flag({ description: 'The salt is only what the ingredients hold by nature' })
  naturalSaltOnly: boolean;

  @Flag({ description: 'A nutrition or health claim is made: no exemption holds' })
  makesClaim: boolean;

  @Flag({ description: 'Small quantities, directly to the consumer or to local shops' })
  smallLocalMaker: boolean;

  @Flag({ description: 'Exempt by 21 CFR 101.9(j)' })
  usSmallBusiness: boolean;

  @Choice(['candy', 'hard_candy', 'baking_candy', 'after_dinner', 'marshmallow'])
  candyKind: string;

  @Grams({ nullable: true, positive: true, description: 'Weight of one piece, for servings' })
  pieceGrams: string | null;

  @Flag()
  preferMorePieces: boolean;
}
