// One version of a sheet saved as a package for learning systems, in the open standard 1EdTech QTI 3.0.
import { strToU8, zipSync } from 'fflate';
import { qtiPackage } from '../exercises/qti/package.ts';
import { sheetLink } from '../exercises/sheet-link.ts';
import type { Question } from '../exercises/question.ts';
import { fingerprint, type Worksheet } from '../exercises/worksheet.ts';
import { saveFile } from './save-file.ts';

/** Saves the package; says what was saved. */
export function saveSheetForLearningSystem(
  sheet: Worksheet,
  version: number,
  questions: readonly Question[],
): string {
  const name = `sheet-${fingerprint(sheetLink(sheet))}-version-${version}`;
  const files = qtiPackage(questions, {
    sheet: name,
    title: `Malt Spirit Handbook, sheet, version ${version}`,
    version: String(sheet.generator),
  });
  const packed = zipSync(
    Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])),
  );
  saveFile(`${name}.qti.zip`, packed, 'application/zip');
  return `Version ${version} is saved as ${name}.qti.zip.`;
}
