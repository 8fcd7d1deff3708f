// Every kind of question.
import type { QuestionKind } from '../question.ts';
import { distilling } from './distilling/index.ts';
import { fermenting } from './fermenting/index.ts';
import { heat } from './heat/index.ts';
import { ingredients } from './ingredients/index.ts';
import { law } from './law/index.ts';
import { line } from './line/index.ts';
import { malting } from './malting/index.ts';
import { mashing } from './mashing/index.ts';
import { maturing } from './maturing/index.ts';
import { milling } from './milling/index.ts';
import { nose } from './nose/index.ts';
import { running } from './running/index.ts';
import { safety } from './safety/index.ts';
import { strength } from './strength/index.ts';
import { visitors } from './visitors/index.ts';

export const kinds: readonly QuestionKind[] = [
  ...malting,
  ...milling,
  ...mashing,
  ...fermenting,
  ...distilling,
  ...maturing,
  ...strength,
  ...safety,
  ...law,
  ...line,
  ...ingredients,
  ...heat,
  ...running,
  ...visitors,
  ...nose,
];
