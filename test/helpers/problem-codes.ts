/** Finds the codes of problems in source text: values of `code`, and arguments for a parameter named `code`. */
import ts from 'typescript';

/** Every code that source files can give a problem; a method with a parameter `code` may be called from another file. */
export function codesInSource(texts: readonly string[]): string[] {
  const files = texts.map((text) => ts.createSourceFile('source.ts', text, ts.ScriptTarget.ES2023, true));
  const methods = new Map<string, number>();
  for (const file of files) {
    walk(file, (node) => {
      if (ts.isMethodDeclaration(node)) notePlace(node, methods);
    });
  }
  return files.flatMap((file) => codesInFile(file, methods));
}

function codesInFile(file: ts.SourceFile, methods: ReadonlyMap<string, number>): string[] {
  const functions = new Map<string, number>();
  walk(file, (node) => {
    if (ts.isFunctionDeclaration(node)) notePlace(node, functions);
  });
  const found: string[] = [];
  walk(file, (node) => {
    if (ts.isPropertyAssignment(node) && node.name.getText() === 'code') found.push(...textsIn(node.initializer));
    if (!ts.isCallExpression(node)) return;
    const called = node.expression;
    const place = ts.isPropertyAccessExpression(called)
      ? methods.get(called.name.text)
      : functions.get(called.getText());
    const given = node.arguments[place ?? -1];
    if (given) found.push(...textsIn(given));
  });
  return found;
}

/** Remembers which parameter of a function is its `code`. */
function notePlace(node: ts.FunctionDeclaration | ts.MethodDeclaration, places: Map<string, number>): void {
  const place = node.parameters.findIndex((parameter) => parameter.name.getText() === 'code');
  if (place >= 0 && node.name) places.set(node.name.getText(), place);
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
