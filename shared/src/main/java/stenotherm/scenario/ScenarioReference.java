package stenotherm.scenario;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a scenario file may say, written out for people and for editors. Both texts are generated
 * from the reader's own rules, and are also the resources {@code reference.md} and {@code
 * scenario.schema.json} of this package.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class ScenarioReference {
  private ScenarioReference() {}

  /**
   * Returns the reference page.
   *
   * @return every key with its values, its meaning and what holds without it, and every name of the
   *     catalogues, as Markdown
   */
  public static String markdown() {
    StringBuilder page = new StringBuilder();
    page.append("# The scenario file\n\n");
    page.append(
        """
        A scenario file is YAML in UTF-8 and begins with `format: 1`. Every number carries its unit; the decimal mark is a point.
        A key that is not listed here is refused, with file, line, column and the closest key. What the file leaves out is filled
        in as the last column says, and the report lists it. Editors that know JSON Schema complete keys with
        `scenario.schema.json`. This page is generated from the rules by which the program reads the file.
        """);
    for (FilePart part : Vocabulary.parts()) {
      page.append("\n## ").append(part.name()).append("\n\n").append(part.meaning()).append("\n\n");
      page.append("| key | value | meaning | if left out |\n|---|---|---|---|\n");
      for (Key key : part.keys()) {
        row(
            page,
            "`" + key.name() + "`",
            key.form().words(),
            key.meaning(),
            key.required() ? "must be given" : key.leftOut());
      }
      if (!part.refused().isEmpty()) {
        page.append("\nRefused by name:\n\n");
        part.refused()
            .forEach(
                (name, reason) ->
                    page.append("- `").append(name).append("`: ").append(reason).append("\n"));
      }
    }
    page.append("\n## values\n\n| value | how it is written | for example |\n|---|---|---|\n");
    for (Form.Called called : Vocabulary.called()) {
      Form form = called.form();
      row(page, called.name(), form.words(), "`" + form.example() + "`");
    }
    for (Map.Entry<String, List<String>> names : Vocabulary.catalogues().entrySet()) {
      page.append("\n## ").append(names.getKey()).append("\n\n");
      names.getValue().forEach(name -> page.append("- ").append(name).append("\n"));
    }
    return page.toString();
  }

  private static void row(StringBuilder page, String... cells) {
    for (String cell : cells) {
      page.append("| ").append(cell.replace("|", "\\|")).append(" ");
    }
    page.append("|\n");
  }

  /**
   * Returns the JSON Schema, draft 2020-12. It knows every key, the few words that some values are
   * chosen from, and examples of all others. How a value is written is left to the reader, so that
   * the schema never refuses what the reader takes.
   *
   * @return the schema as JSON
   */
  public static String schema() {
    Map<String, Object> definitions = new LinkedHashMap<>();
    Vocabulary.parts().forEach(part -> definitions.put(part.anchor(), schemaOf(part)));
    Vocabulary.called().forEach(called -> definitions.put(called.anchor(), called.form().schema()));
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "Stenotherm scenario, format 1");
    schema.put("$ref", "#/$defs/" + Vocabulary.SCENARIO.anchor());
    schema.put("$defs", definitions);
    return json(schema);
  }

  private static Map<String, Object> schemaOf(FilePart part) {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Key key : part.keys()) {
      Map<String, Object> property = new LinkedHashMap<>();
      property.put(
          "description", key.meaning() + (key.required() ? "" : "; if left out: " + key.leftOut()));
      property.putAll(key.form().schema());
      if (!key.preset().text().isEmpty()) {
        property.put("default", key.preset().text());
      }
      properties.put(key.name(), property);
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", "object");
    schema.put("description", part.meaning());
    schema.put("properties", properties);
    schema.put("required", part.keys().stream().filter(Key::required).map(Key::name).toList());
    schema.put("additionalProperties", false);
    return schema;
  }

  private static String json(Map<String, Object> value) {
    StringWriter text = new StringWriter();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
      write(json, value);
    } catch (IOException fault) {
      throw new UncheckedIOException("writing a text to memory", fault);
    }
    return text + "\n";
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        json.writeFieldName(String.valueOf(entry.getKey()));
        write(json, entry.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(json, item);
      }
      json.writeEndArray();
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else {
      json.writeString(String.valueOf(value));
    }
  }
}
