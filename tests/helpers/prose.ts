/** Finds what reads like a sentence in the source and is not said through `t`, so that nobody would hear it in German. */

import ts from 'typescript';
import { keyOf, parsed } from './sentences.ts';

export interface Prose {
  readonly file: string;
  readonly line: number;
  /** With its values as {0}, {1}, ... */
  readonly words: string;
}

/** In all of these files. What one of them lists as a code is a code in the others. */
export function proseIn(files: readonly string[], read: (file: string) => ts.SourceFile = parsed): Prose[] {
  const sources = files.map((file) => ({ file, source: read(file) }));
  const codes = new Set(sources.flatMap(({ source }) => [...codesIn(source)]));
  const cited = new Set(
    sources.flatMap(({ file, source }) => (isCatalogue(file) ? [...citedIn(source)] : [])),
  );
  return sources.flatMap(({ file, source }) =>
    [...textsIn(source)]
      .filter((text) => !isSaid(text) && !isCompared(text) && !codes.has(wordsOf(text)))
      .filter((text) => !(isCatalogue(file) && isCited(text, cited)))
      .map((text) => ({ file, line: lineOf(source, text), words: wordsOf(text) }))
      .filter(({ words }) => readsLikeProse(words)),
  );
}

type Text = ts.StringLiteral | ts.TemplateLiteral;

function wordsOf(text: Text): string {
  return ts.isStringLiteral(text) ? text.text : keyOf(text);
}

function lineOf(source: ts.SourceFile, node: ts.Node): number {
  return source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
}

/** Two words or more, of two letters at least; what has signs of code in it is none, and so is a list of units. */
function readsLikeProse(words: string): boolean {
  const found = words.split(/\s+/).filter((word) => WORD.test(word));
  return found.length >= 2 && found.some((word) => /\p{L}{3}/u.test(word));
}

const WORD = /^[("'‘’“”]*\p{L}[\p{L}’'-]*\p{L}[.,;:!?)"'‘’“”]*$/u;

/** Texts that are values of the program; none of what is thrown for programmers. */
function* textsIn(node: ts.Node): Generator<Text> {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
  if (ts.isNewExpression(node) && /^(?:Type|Range)?Error$/.test(node.expression.getText())) return;
  if ((ts.isStringLiteral(node) || ts.isTemplateLiteral(node)) && !isName(node)) yield node;
  for (const child of childrenOf(node)) yield* textsIn(child);
}

function childrenOf(node: ts.Node): ts.Node[] {
  const children: ts.Node[] = [];
  ts.forEachChild(node, (child) => void children.push(child));
  return children;
}

/** Of a field. */
function isName(text: Text): boolean {
  const { parent } = text;
  return ts.isPropertyAssignment(parent) && parent.name === text;
}

/** In a template of `t` or `msgid`, or as the words for many. */
function isSaid({ parent }: Text): boolean {
  if (ts.isTaggedTemplateExpression(parent)) return true;
  return ts.isCallExpression(parent) && parent.expression.getText() === 'ngettext';
}

/** Held against another text, looked up by it, or taken apart as a list of words to know. */
function isCompared(text: Text): boolean {
  const { parent } = text;
  if (ts.isBinaryExpression(parent)) return /^(?:[!=]==|in)$/.test(parent.operatorToken.getText());
  if (ts.isElementAccessExpression(parent)) return parent.argumentExpression === text;
  if (ts.isPropertyAccessExpression(parent)) return parent.name.text === 'split';
  if (ts.isCallExpression(parent)) return COMPARES.test(parent.expression.getText());
  if (ts.isArrayLiteralExpression(parent)) return isSet(parent.parent);
  return ts.isCaseClause(parent);
}

function isSet(node: ts.Node): boolean {
  return ts.isNewExpression(node) && node.expression.getText() === 'Set';
}

/** Methods that compare, and what gives a field its title and description in a schema for programs. */
const COMPARES = /(?:\.(?:startsWith|endsWith|includes|indexOf|has|get)|^field)$/;

/** There every number has its source beside it, for those who read the code. */
function isCatalogue(file: string): boolean {
  return /^shared-model\/(?:catalogue\/|drawing\/papers\.ts$)/.test(file);
}

/** What is given as a source, by name. */
function* citedIn(node: ts.Node, isWithin = false): Generator<string> {
  if (isWithin && ts.isIdentifier(node)) yield node.text;
  for (const child of childrenOf(node)) yield* citedIn(child, isWithin || isSourceField(node));
}

function isCited(text: Text, cited: ReadonlySet<string>): boolean {
  const isOfSource = (node: ts.Node): boolean =>
    isSourceField(node) || (ts.isVariableDeclaration(node) && cited.has(node.name.getText()));
  return ts.findAncestor(text, isOfSource) !== undefined;
}

function isSourceField(node: ts.Node): boolean {
  return ts.isPropertyAssignment(node) && /^source(?:Of)?$/.test(node.name.getText());
}

/** What a type lists as one of several, and names of fields in quotes. */
function* codesIn(node: ts.Node): Generator<string> {
  if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal)) yield node.literal.text;
  if (ts.isPropertyAssignment(node) && ts.isStringLiteral(node.name)) yield node.name.text;
  for (const child of childrenOf(node)) yield* codesIn(child);
}
