/** Names as towns have them, with the small words inside: "Val di Sotto", "Bad Tölz". */
export const placeNames =
  /\p{Lu}\p{Ll}[\p{L}'’-]{1,30}(?:[ -](?:(?:de|la|del|di|sur|am|an|der|upon|on|en)[ -]){0,2}\p{Lu}\p{Ll}[\p{L}'’-]{1,30}){0,2}/gu;
