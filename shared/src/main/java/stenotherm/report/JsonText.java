package stenotherm.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import stenotherm.study.Odds;

/** JSON with one line end everywhere: the same bytes on every system. */
final class JsonText {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private JsonText() {}

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  /** Adds a share with its interval. */
  static void addOdds(ObjectNode node, Odds odds) {
    node.put("within", odds.within());
    node.put("low", odds.low());
    node.put("high", odds.high());
  }

  static String of(ObjectNode root) {
    try {
      return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
