/** What is said of a value where there is one, else nothing; an empty text is none. */
export function stated<V, S>(value: V | undefined, say: (value: V) => S): S[] {
  return value === undefined || value === '' ? [] : [say(value)];
}

/** A statement about one field of a record: its name and what is recorded there. */
export type FieldStatement<T, K extends keyof T & string = keyof T & string> = {
  readonly [F in K]-?: { readonly code: F; readonly value: NonNullable<T[F]> };
}[K];

/** A statement for each of these fields that holds anything, in their order. */
export function fieldStatements<T extends object, K extends keyof T & string>(
  record: T,
  fields: readonly K[],
): FieldStatement<T, K>[] {
  return fields.flatMap((code) =>
    stated(record[code] as NonNullable<T[K]> | undefined, (value) => ({ code, value })),
  ) as FieldStatement<T, K>[];
}
