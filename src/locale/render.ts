/**
 * For every statement of a union, told apart by its `code` (or another `key`), what a language makes of it: a text, or a
 * function of the statement's parameters. The compiler refuses a missing or an extra one.
 */
export type Renderings<S, R = string, K extends keyof S & string = 'code' & keyof S> = {
  readonly [C in S[K] & string]: R | ((statement: WithCode<S, K, C>) => R);
};

type WithCode<S, K extends keyof S, C> = S extends unknown ? (C extends S[K] ? S : never) : never;

/** Renders a statement, told apart by its `code`. */
export function render<S extends { readonly code: string }, R = string>(
  renderings: Renderings<S, R>,
  statement: S,
): R {
  return renderBy('code', renderings as never, statement);
}

/** Renders what is told apart by its `kind`, as findings and acts are. */
export function renderKind<S extends { readonly kind: string }, R = string>(
  renderings: Renderings<S, R, 'kind' & keyof S>,
  statement: S,
): R {
  return renderBy('kind', renderings as never, statement);
}

function renderBy<S, R>(
  key: keyof S,
  renderings: Readonly<Record<string, R | ((statement: S) => R)>>,
  statement: S,
): R {
  const rendering = renderings[String(statement[key])] as R | ((statement: S) => R);
  return typeof rendering === 'function' ? (rendering as (statement: S) => R)(statement) : rendering;
}
