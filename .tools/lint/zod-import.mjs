// With a bundler, any other form of importing zod ships every one of its locales: about 87 kB instead of 6 (gzip).
import { visitSpecifiers } from './layers.mjs';

function isNamespace(node) {
  return (
    node.type === 'ImportDeclaration' &&
    node.specifiers.length === 1 &&
    node.specifiers[0].type === 'ImportNamespaceSpecifier' &&
    node.specifiers[0].local.name === 'z'
  );
}

export const zodImport = {
  meta: {
    type: 'problem',
    schema: [],
    docs: { description: "zod comes only as import * as z from 'zod/mini'" },
  },
  create(context) {
    return visitSpecifiers((node, specifier) => {
      if (!/^zod(\/|$)/.test(specifier)) return;
      if (specifier === 'zod/mini' && isNamespace(node.parent)) return;
      context.report({ node, message: "zod is imported only as: import * as z from 'zod/mini'" });
    });
  },
};
