// Results as plain JSON, for whoever keeps records elsewhere. The form is our own and told here; it is no open standard.
import { families } from '../families.ts';
import { scoreOfMarks, type SheetResult } from '../result.ts';
import { pointsOf } from '../verdict.ts';

/**
 * `format` and `formatVersion` name the form. Each of `results` has the name as it was typed, the sheet's mark and version,
 * day and attempt where the code says them, points and what they are of (by default one a question), and for each question its number, verdict, points (0, 0.5 or 1) and, where it was
 * recognised, the mistake in words. Nothing in it proves who answered.
 */
export const resultsJson = (
  results: readonly SheetResult[],
  scored: (result: SheetResult) => {
    readonly got: number;
    readonly of: number;
    readonly isPass?: boolean | undefined;
  } = (result) => ({
    got: scoreOfMarks(result),
    of: result.marks.length,
  }),
): string =>
  `${JSON.stringify(
    {
      format: 'malt-spirit-handbook/results',
      formatVersion: 1,
      results: results.map((result) => ({
        name: result.name,
        sheet: result.sheet,
        sheetVersion: result.version,
        ...(result.day !== undefined && { day: result.day, attempt: result.attempt }),
        points: scored(result).got,
        of: scored(result).of,
        ...(scored(result).isPass !== undefined && { pass: scored(result).isPass }),
        questions: result.marks.map(({ verdict, family }, i) => ({
          question: i + 1,
          verdict,
          points: pointsOf(verdict),
          ...(family && { mistake: families[family] }),
        })),
      })),
    },
    null,
    2,
  )}\n`;
