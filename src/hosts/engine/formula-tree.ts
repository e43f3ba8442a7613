import { isFunction, type Node, parse, type Token } from "@borgar/fx";

/** The tree of a formula; undefined when it cannot be read as one. */
export const parsed = (tokens: readonly Token[]): Node | undefined => {
  try {
    return parse([...tokens]);
  } catch {
    return undefined;
  }
};

export const visit = (node: unknown, see: (node: Node) => void): void => {
  if (Array.isArray(node)) for (const child of node) visit(child, see);
  else if (node && typeof node === "object" && "type" in node) {
    see(node as Node);
    for (const [key, child] of Object.entries(node)) if (key !== "loc" && typeof child === "object") visit(child, see);
  }
};

/** The names that LET and LAMBDA bring into a formula, in small letters. */
export const localNames = (tokens: readonly Token[]): ReadonlySet<string> => {
  const names = new Set<string>();
  if (!tokens.some((token) => isFunction(token) && /^(LET|LAMBDA)$/i.test(token.value))) return names;
  visit(parsed(tokens), (node) => {
    const { type, id, params } = node as Node & { id?: { name: string }; params?: { name: string }[] };
    if (type === "LetDeclarator" && id) names.add(id.name.toLowerCase());
    if (type === "LambdaExpression") for (const parameter of params ?? []) names.add(parameter.name.toLowerCase());
  });
  return names;
};
