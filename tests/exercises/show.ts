// Prints drawn questions for whoever writes them: npm run questions -- <kind> [how many] [from seed]
import { format, formatNumber } from '../../src/core/format.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { isChoiceQuestion, isNumberQuestion, isOrderQuestion } from '../../src/exercises/question.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const [id, count = '3', from = '0'] = process.argv.slice(2);
for (const kind of questionKinds.filter((each) => id === undefined || each.id === id || each.topic === id)) {
  for (let seed = Number(from); seed < Number(from) + Number(count); seed++) {
    const question = drawQuestion(kind, String(seed), builtInHouse);
    console.log(`\n— ${kind.id} (${kind.topic}, ${kind.form}, level ${kind.level}), seed ${seed}`);
    if (!question) {
      console.log('NOTHING FIT');
      continue;
    }
    console.log(question.prompt);
    if (isNumberQuestion(question)) {
      const { answer, of, digits, tolerance, slips } = question;
      console.log(`= ${format(answer, of, digits)} ± ${tolerance.toPrecision(2)}`);
      for (const { family, value, say } of slips)
        console.log(`   ${family}: ${formatNumber(value, digits)} — ${say}`);
    }
    if (isChoiceQuestion(question))
      question.options.forEach(({ text, why }, i) =>
        console.log(`   ${i === question.answer ? '*' : ' '} ${text} — ${why}`),
      );
    if (isOrderQuestion(question))
      console.log(
        `${question.items.map((item, i) => `   ${i}: ${item}`).join('\n')}\n= ${question.answer.join(' ')}`,
      );
    console.log(question.working.map((step) => `   › ${step}`).join('\n'));
  }
}
