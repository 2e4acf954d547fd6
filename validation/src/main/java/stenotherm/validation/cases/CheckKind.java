package stenotherm.validation.cases;

/** What a reference value is; kinds are never mixed. */
enum CheckKind {
  VERIFICATION("verification", "exact mathematics"),
  VALIDATION("validation", "published value or measurement"),
  /** What people do, without a source: a difference is a finding, not a failure. */
  PRACTICE("practice", "common practice without a source"),
  REGRESSION("regression", "own earlier output or other solver"),
  UNSTATED("not stated", "the file does not say");

  private final String word;
  private final String meaning;

  CheckKind(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The word by which files and reports name the kind. */
  String word() {
    return word;
  }

  /** What the word means. */
  String meaning() {
    return meaning;
  }
}
