/** Text that every store keeps letter for letter: no NUL, no half of a surrogate pair. */
export const keepable = (text: string): boolean =>
  !/\0|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/.test(text);
