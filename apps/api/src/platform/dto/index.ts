export { Choice, Choices, Id, Ids, Text, Texts, type FieldOptions } from './text-fields';
export {
  Day,
  DecimalText,
  Flag,
  Grams,
  Instant,
  Money,
  Quantity,
  Whole,
  Wholes,
} from './number-fields';
export { JsonList, JsonObject, ListOf, Nested } from './nested-fields';
