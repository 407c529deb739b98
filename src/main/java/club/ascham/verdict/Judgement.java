package club.ascham.verdict;

/**
 * What becomes of a check when it is judged: a verdict, or questions that must be answered first.
 */
public sealed interface Judgement permits Verdict, AskAgain {}
