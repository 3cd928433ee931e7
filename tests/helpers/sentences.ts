/** Finds what is said in the source: the keys that a catalogue of another language has to have. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const repository = fileURLToPath(new URL('../..', import.meta.url));

export interface Sentence {
  readonly file: string;
  readonly line: number;
  /** With its values as {0}, {1}, ... */
  readonly english: string;
  /** What is said for many; null when no number decides. */
  readonly many: string | null;
  /** What is said for many has the values of what is said for one, in the same order. */
  readonly sharesValues: boolean;
  readonly isInFunction: boolean;
}

export function sourceFiles(folder: string): string[] {
  return readdirSync(join(repository, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => join(folder, path));
}

export function sentencesIn(file: string): Sentence[] {
  const source = parsed(file);
  const found: Sentence[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag)) {
      const template = manyOf(node);
      const many = template && (ts.isTemplateLiteral(template) ? keyOf(template) : '');
      const isSaid = node.tag.text === 't' || many !== null;
      if (isSaid)
        found.push({
          file,
          line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1,
          english: keyOf(node.template),
          many,
          sharesValues: template === null || String(valuesIn(template)) === String(valuesIn(node.template)),
          isInFunction: isInFunction(node),
        });
    }
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

export function parsed(file: string): ts.SourceFile {
  const code = readFileSync(join(repository, file), 'utf8');
  return ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
}

/** The words for many, when the template is the first argument of `ngettext`. */
function manyOf(node: ts.TaggedTemplateExpression): ts.Node | null {
  const call = node.parent;
  if (!ts.isIdentifier(node.tag) || node.tag.text !== 'msgid' || !ts.isCallExpression(call)) return null;
  return call.arguments[1] ?? call;
}

export function keyOf(template: ts.TemplateLiteral): string {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return template.text;
  return (
    template.head.text + template.templateSpans.map(({ literal }, i) => `{${i}}${literal.text}`).join('')
  );
}

function valuesIn(template: ts.Node): string[] {
  if (!ts.isTemplateExpression(template)) return [];
  return template.templateSpans.map(({ expression }) => expression.getText());
}

function isInFunction(node: ts.Node): boolean {
  return (
    ts.findAncestor(node, (each) => ts.isFunctionLike(each) || ts.isPropertyDeclaration(each)) !== undefined
  );
}
