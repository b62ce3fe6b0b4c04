import Answer from './Answer.astro';
import Caution from './Caution.astro';
import Cite from './Cite.astro';
import Compare from './Compare.astro';
import Len from './Len.astro';
import Live from './Live.astro';
import Pair from './Pair.astro';
import Question from './Question.astro';
import RuleTable from './RuleTable.astro';
import SelfCheck from './SelfCheck.astro';
import Term from './Term.astro';
import Worked from './Worked.astro';

/** What an author may use in a lesson, without importing it. */
export const authorComponents = {
  Answer,
  Caution,
  Cite,
  Compare,
  Len,
  Live,
  Pair,
  Question,
  RuleTable,
  SelfCheck,
  Term,
  Worked,
};
