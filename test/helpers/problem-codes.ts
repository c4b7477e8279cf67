/** Finds the codes of problems in source text: values of `code`, and arguments for a parameter named `code`. */
import ts from 'typescript';

/** Every code that a source file can give a problem. */
export function codesInSource(text: string): string[] {
  const file = ts.createSourceFile('source.ts', text, ts.ScriptTarget.ES2023, true);
  const places = new Map<string, number>();
  walk(file, (node) => {
    if (!ts.isFunctionDeclaration(node) || !node.name) return;
    const place = node.parameters.findIndex((parameter) => parameter.name.getText() === 'code');
    if (place >= 0) places.set(node.name.text, place);
  });
  const found: string[] = [];
  walk(file, (node) => {
    if (ts.isPropertyAssignment(node) && node.name.getText() === 'code') found.push(...textsIn(node.initializer));
    if (!ts.isCallExpression(node) || !ts.isIdentifier(node.expression)) return;
    const given = node.arguments[places.get(node.expression.text) ?? -1];
    if (given) found.push(...textsIn(given));
  });
  return found;
}

/** The members of a union of texts that stands for `property` of an interface. */
export function unionInSource(text: string, owner: string, property: string): string[] {
  const file = ts.createSourceFile('source.ts', text, ts.ScriptTarget.ES2023, true);
  const found: string[] = [];
  walk(file, (node) => {
    if (!ts.isInterfaceDeclaration(node) || node.name.text !== owner) return;
    const member = node.members.find((one) => one.name?.getText() === property);
    if (member) found.push(...textsIn(member));
  });
  return found;
}

function textsIn(node: ts.Node): string[] {
  if (ts.isStringLiteral(node)) return [node.text];
  // Of `one ? 'this' : 'that'` the condition is no code.
  if (ts.isConditionalExpression(node)) return [...textsIn(node.whenTrue), ...textsIn(node.whenFalse)];
  const texts: string[] = [];
  ts.forEachChild(node, (child) => void texts.push(...textsIn(child)));
  return texts;
}

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}
