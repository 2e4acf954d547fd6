package stenotherm.scenario;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** Holds scenarios against the schema that editors use, by a validator that is not ours. */
final class Schemas {
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(ScenarioReference.schema());

  private Schemas() {}

  static JsonNode tree(String text) {
    try {
      return YAML.readTree(text);
    } catch (JsonProcessingException fault) {
      throw new IllegalArgumentException(fault);
    }
  }

  /** What the schema has against a scenario. */
  static List<String> complaints(String text) {
    return SCHEMA.validate(tree(text)).stream().map(Error::toString).toList();
  }
}
