// A question without what is hung on it: who says so, and “is that right?”.

/** What people hang on what they say: it asks nothing. */
const TAIL =
  /[,.;\s–-]*\b(?:is (?:that|this|it|he|she) (?:right|true|so|correct)|are they right|true|am i right|are you sure|or what|you know|or something|please|thanks?(?: you)?)\b[\s?!.]*$/i;
/** Who says so, and what stands before a question without asking. */
const LEAD =
  /^(?:(?:so|and|but|ok|well|hang on|sorry|excuse me|hi|hello|right|now|after all that)[, ]+)*(?:(?:is it|it['’]?s|it is) (?:really )?true (?:that )?|(?:my|our|the|a|his|her) (?:[\w'’-]+ ){1,4}?(?:says?|said|reckons?|swears(?: blind)?|thinks?|told (?:me|us)|claims?|insists?|read|heard)(?: that)?\s+|in plain english,? )/i;
/** What is asked, where some words of it are left. */
export const bareQuestion = (question: string): string => {
  const rest = question.replace(TAIL, '?').replace(LEAD, '');
  return rest.split(/\s+/).length > 2 ? rest : question;
};
