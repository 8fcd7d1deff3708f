// Which mutants `npm run check` would see: TypeScript reads each changed file in the place of the kept one.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import ts from 'typescript';
import type { MutantResult } from '@stryker-mutator/api/core';

const offset = (text: string, { line, column }: { line: number; column: number }): number =>
  text
    .split('\n')
    .slice(0, line)
    .reduce((sum, { length }) => sum + length + 1, column);

/** The text of the file with the mutant in it. */
function mutated(text: string, { location, replacement }: MutantResult): string {
  return text.slice(0, offset(text, location.start)) + replacement + text.slice(offset(text, location.end));
}

export function typesSee(mutants: readonly MutantResult[]): Set<MutantResult> {
  const { config } = ts.readConfigFile('tsconfig.json', (file) => readFileSync(file, 'utf8'));
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, '.');
  const files = [...new Set(mutants.map(({ fileName }) => resolve(fileName)))];
  const texts = new Map<string, string>();
  let version = 0;
  const service = ts.createLanguageService({
    readFile: ts.sys.readFile,
    fileExists: ts.sys.fileExists,
    directoryExists: ts.sys.directoryExists,
    getDirectories: ts.sys.getDirectories,
    readDirectory: ts.sys.readDirectory,
    getCurrentDirectory: ts.sys.getCurrentDirectory,
    getCompilationSettings: () => options,
    getScriptFileNames: () => files,
    getScriptVersion: (file) => (texts.has(file) ? String(version) : '0'),
    getScriptSnapshot: (file) => {
      const text = texts.get(file) ?? ts.sys.readFile(file);
      return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
    },
    getDefaultLibFileName: ts.getDefaultLibFilePath,
  });
  return new Set(
    mutants.filter((mutant) => {
      const file = resolve(mutant.fileName);
      texts.clear();
      texts.set(file, mutated(readFileSync(file, 'utf8'), mutant));
      version += 1;
      return service.getSyntacticDiagnostics(file).length + service.getSemanticDiagnostics(file).length > 0;
    }),
  );
}
