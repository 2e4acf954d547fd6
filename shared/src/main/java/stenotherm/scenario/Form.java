package stenotherm.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stenotherm.text.Quantity;

/**
 * What a value of a scenario file says, for people, for editors and for examples in messages. Only
 * its reader knows how it is written.
 */
sealed interface Form {
  /** What may be written, for the reference page, in Markdown. */
  String words();

  /** A value as a file could have it, on one line. */
  String example();

  /** The example as it can be pasted anywhere: within braces or brackets a comma ends a value. */
  default String pastedExample() {
    String example = example();
    boolean isPlain = !example.startsWith("[") && !example.startsWith("{");
    return isPlain && example.contains(",") ? '"' + example + '"' : example;
  }

  /** Kind, names and examples as JSON Schema; never stricter than the reader. */
  Map<String, Object> schema();

  /** The mappings that the value may be or hold. */
  List<FilePart> parts();

  /** The forms with a name that this one is or holds, outer ones first. */
  List<Called> called();

  /**
   * A form with a name, which the reference page and the schema describe in one place.
   *
   * @param name the name
   * @param form the form
   */
  record Called(String name, Form form) implements Form {
    /** The name as the schema has it. */
    String anchor() {
      return "value-" + name.replace(' ', '-');
    }

    @Override
    public String words() {
      return "[" + name + "](#values)";
    }

    @Override
    public String example() {
      return form.example();
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("$ref", "#/$defs/" + anchor());
    }

    @Override
    public List<FilePart> parts() {
      return form.parts();
    }

    @Override
    public List<Called> called() {
      List<Called> all = new ArrayList<>(List.of(this));
      all.addAll(form.called());
      return all;
    }
  }

  /**
   * A single text.
   *
   * @param words what may be written
   * @param schema its JSON Schema without the examples
   * @param examples values as a file could have them, at least one
   */
  record Single(String words, Map<String, Object> schema, List<String> examples) implements Form {
    @Override
    public String example() {
      return examples.get(0);
    }

    @Override
    public Map<String, Object> schema() {
      Map<String, Object> all = new LinkedHashMap<>(schema);
      if (!all.containsKey("enum") && !all.containsKey("const")) {
        all.put("examples", examples);
      }
      return all;
    }

    @Override
    public List<FilePart> parts() {
      return List.of();
    }

    @Override
    public List<Called> called() {
      return List.of();
    }
  }

  /**
   * A list.
   *
   * @param item what each item is
   * @param least smallest number of items
   * @param most largest number of items
   */
  record Items(Form item, int least, int most) implements Form {
    @Override
    public String words() {
      String count = least == most ? least + " of " : "";
      return "list of " + count + item.words();
    }

    @Override
    public String example() {
      return "["
          + String.join(", ", java.util.Collections.nCopies(least, item.pastedExample()))
          + "]";
    }

    @Override
    public Map<String, Object> schema() {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "array");
      schema.put("items", item.schema());
      schema.put("minItems", least);
      if (most < Integer.MAX_VALUE) {
        schema.put("maxItems", most);
      }
      return schema;
    }

    @Override
    public List<FilePart> parts() {
      return item.parts();
    }

    @Override
    public List<Called> called() {
      return item.called();
    }
  }

  /**
   * Keys with values.
   *
   * @param part which
   */
  record Keyed(FilePart part) implements Form {
    @Override
    public String words() {
      return "keys of [" + part.name() + "](#" + part.anchor() + ")";
    }

    @Override
    public String example() {
      return part.keys().stream()
          .filter(Key::required)
          .map(key -> key.name() + ": " + key.form().pastedExample())
          .collect(Collectors.joining(", ", "{", "}"));
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("$ref", "#/$defs/" + part.anchor());
    }

    @Override
    public List<FilePart> parts() {
      return List.of(part);
    }

    @Override
    public List<Called> called() {
      return List.of();
    }
  }

  /**
   * One of several forms.
   *
   * @param forms the forms, the shortest to write first
   */
  record Either(List<Form> forms) implements Form {
    @Override
    public String words() {
      return forms.stream().map(Form::words).collect(Collectors.joining(", or "));
    }

    @Override
    public String example() {
      // a mapping of which every key may be left out says nothing
      return forms.stream()
          .map(Form::example)
          .filter(example -> !example.equals("{}"))
          .findFirst()
          .orElse("");
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("anyOf", forms.stream().map(Form::schema).toList());
    }

    @Override
    public List<FilePart> parts() {
      return forms.stream().flatMap(form -> form.parts().stream()).toList();
    }

    @Override
    public List<Called> called() {
      return forms.stream().flatMap(form -> form.called().stream()).toList();
    }
  }

  /** A text of any kind; what looks like a number to YAML is text here, too. */
  static Form text(String words, String... examples) {
    return new Single(
        words, Map.of("type", List.of("string", "number", "boolean")), List.of(examples));
  }

  /** One of some names. */
  static Form oneOf(List<String> names) {
    return new Single(
        names.stream().map(name -> "`" + name + "`").collect(Collectors.joining(", ")),
        Map.of("enum", names),
        names);
  }

  /** A text that needs more than a bare number; the reader knows how it is written. */
  static Form written(String words, List<String> examples) {
    return new Single(words, Map.of("type", "string"), examples);
  }

  /** A number with its unit. */
  static Form of(Quantity quantity, String example) {
    String fractions =
        quantity == Quantity.LENGTH || quantity == Quantity.MASS
            ? "; fractions such as `1 1/2 " + (quantity == Quantity.MASS ? "oz" : "in") + "`, too"
            : "";
    return written(
        quantity.kind() + " (" + String.join(", ", quantity.unitNames()) + fractions + ")",
        List.of(example));
  }

  static Form called(String name, Form form) {
    return new Called(name, form);
  }

  static Form table(FilePart part) {
    return new Keyed(part);
  }

  static Form listOf(Form item) {
    return new Items(item, 1, Integer.MAX_VALUE);
  }

  static Form either(Form... forms) {
    return new Either(List.of(forms));
  }
}
