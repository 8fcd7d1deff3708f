// What Stryker asks of us: it tries the drawn mutants only, and each verdict is written down as it comes.
import { appendFileSync, readFileSync } from 'node:fs';
import { CheckStatus, type CheckResult, type Checker } from '@stryker-mutator/api/check';
import type { Mutant, MutantResult, Position } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import type { Reporter } from '@stryker-mutator/api/report';
import { keyOf } from './mutant.ts';

class Drawn implements Checker {
  private drawn = new Set<string>();
  async init(): Promise<void> {
    this.drawn = new Set(JSON.parse(readFileSync(process.env['MUTANTS_DRAWN']!, 'utf8')) as string[]);
  }
  async check(mutants: Mutant[]): Promise<Record<string, CheckResult>> {
    const result = (mutant: Mutant): CheckResult =>
      this.drawn.has(keyOf(mutant))
        ? { status: CheckStatus.Passed }
        : { status: CheckStatus.CompileError, reason: 'not drawn' };
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, result(mutant)]));
  }
  async group(mutants: Mutant[]): Promise<string[][]> {
    return [mutants.map(({ id }) => id)];
  }
}

/** In a report lines and columns count from one, elsewhere from nought. */
const fromNought = ({ line, column }: Position): Position => ({ line: line - 1, column: column - 1 });

class Lines implements Reporter {
  onMutantTested({ fileName, location, replacement, status }: Readonly<MutantResult>): void {
    const place = { start: fromNought(location.start), end: fromNought(location.end) };
    if (status !== 'CompileError')
      appendFileSync(
        process.env['MUTANTS_LINES']!,
        `${JSON.stringify({ fileName, location: place, replacement, status })}\n`,
      );
  }
}

export const strykerPlugins = [
  declareClassPlugin(PluginKind.Checker, 'drawn', Drawn),
  declareClassPlugin(PluginKind.Reporter, 'lines', Lines),
];
