// How a signed file stands to what the reader was handed before: its key, its release, and both in a sentence.
import { LAST_RELEASE, type Signed } from './envelope.ts';
import { takenOf, type HandedThings } from './handed.ts';

export interface JudgedFile {
  /** The first key seen for this thing, the same as before, or another. */
  readonly key: 'first' | 'same' | 'another';
  /** `changed` is a release of a number that was taken already, with another text. */
  readonly release: 'first' | 'older' | 'same' | 'changed' | 'newer';
  readonly ofKey: string;
  readonly ofRelease: string;
}

const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']; // prettier-ignore
const behind = (by: number) => `${words[by] ?? by} ${by === 1 ? 'release' : 'releases'} behind`;

function keyJudged(signed: Signed, handed: HandedThings): Pick<JudgedFile, 'key' | 'ofKey'> {
  const { name, signer, key } = signed;
  const before = takenOf(handed, signed);
  if (before?.key === key)
    return { key: 'same', ofKey: `Signed with the same key as the ${name} that you opened before.` };
  if (before)
    return {
      key: 'another',
      ofKey: `Take care: ${name} was signed with another key when you opened it before. Either ${signer} has a new key, or this file is not by whom you think. Compare the fingerprint before you go on.`,
    };
  const known = Object.entries(handed).find((entry) => entry[1].key === key);
  return {
    key: 'first',
    ofKey: known
      ? `The first ${name} that you open here, signed with a key that you know from ${known[1].as}.`
      : `The first ${name} that you open here, by a key that this browser has not seen. Compare the fingerprint with ${signer}, aloud, before you rely on it.`,
  };
}

function releaseJudged(signed: Signed, handed: HandedThings): Pick<JudgedFile, 'release' | 'ofRelease'> {
  const { release, text, signer } = signed;
  const before = takenOf(handed, signed);
  if (!before) return { release: 'first', ofRelease: '' };
  const by = release - before.release;
  if (by > 0)
    return { release: 'newer', ofRelease: `You have release ${before.release}: you are ${behind(by)}.` };
  if (by < 0)
    return {
      release: 'older',
      ofRelease: `You have release ${before.release}; this file is release ${release}, ${behind(-by)} yours. Nothing was changed.`,
    };
  return text === before.text
    ? { release: 'same', ofRelease: `You have release ${release} already. Nothing was changed.` }
    : {
        release: 'changed',
        ofRelease: `You have a release ${release} already, and this one says something else: ask ${signer} which of the two holds. Nothing was changed.`,
      };
}

/** Judges a file whose signature fits. */
export const judgeFile = (signed: Signed, handed: HandedThings): JudgedFile => ({
  ...keyJudged(signed, handed),
  ...releaseJudged(signed, handed),
});

/** Why a thing cannot be released under a number, or nothing: numbers go up. */
export const numberProblem = (release: number, last: number): string | undefined =>
  last >= LAST_RELEASE
    ? `Release ${LAST_RELEASE} is the last there can be; give the house another name.`
    : release > last
      ? undefined
      : `Release ${last} is out already: the next is ${last + 1} or more, so that those who have it can tell.`;
