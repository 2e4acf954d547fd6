package stenotherm.scenario;

import stenotherm.base.Checks;

/**
 * A key of a scenario file.
 *
 * @param name the key
 * @param form how its value is written
 * @param meaning what it says, in one line
 * @param required whether the file must give it
 * @param leftOut what holds if the file does not give it, in words; empty if it must
 * @param preset what stands in for the value if the file does not give it; may be empty
 */
record Key(
    String name, Form form, String meaning, boolean required, String leftOut, Preset preset) {
  /**
   * What stands in for a value.
   *
   * @param text the value as the file could have given it; empty if nothing stands in
   * @param basis how it was got, for example "assumed"
   * @param condition where it counts, for example "in the sun"; empty for everywhere
   */
  record Preset(String text, String basis, String condition) {
    static final Preset NONE = new Preset("", "", "");
  }

  Key {
    Checks.name("key", name);
    Checks.name("meaning of key '" + name + "'", meaning);
  }

  /** A key that must be given. */
  static Key required(String name, Form form, String meaning) {
    return new Key(name, form, meaning, true, "", Preset.NONE);
  }

  /** A key that may be left out; what then holds is said in words. */
  static Key optional(String name, Form form, String meaning, String leftOut) {
    return new Key(
        name, form, meaning, false, Checks.name("what holds without it", leftOut), Preset.NONE);
  }

  /** A key whose value, if left out, is taken from a text that the file could have had. */
  static Key preset(String name, Form form, String meaning, String text, String basis) {
    return new Key(
        name, form, meaning, false, text + " (" + basis + ")", new Preset(text, basis, ""));
  }

  /** The same key, whose preset counts under a condition only. */
  Key where(String condition) {
    return new Key(
        name,
        form,
        meaning,
        required,
        leftOut + ", " + condition,
        new Preset(preset.text(), preset.basis(), condition));
  }
}
