// Which mutants `npm run check` would see: TypeScript reads each changed file in the place of the kept one.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import ts from 'typescript';
import { put, type Placed } from './mutant.ts';

export function typesSee<M extends Placed>(mutants: readonly M[]): Set<M> {
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
  const amiss = (file: string) =>
    service.getSyntacticDiagnostics(file).length + service.getSemanticDiagnostics(file).length;
  const own = new Map(files.map((file) => [file, amiss(file)])); // before the first build Astro's own types are not there yet
  return new Set(
    mutants.filter((mutant) => {
      const file = resolve(mutant.fileName);
      texts.clear();
      texts.set(file, put(mutant).text);
      version += 1;
      return amiss(file) > own.get(file)!;
    }),
  );
}
