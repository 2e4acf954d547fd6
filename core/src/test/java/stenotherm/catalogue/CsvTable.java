package stenotherm.catalogue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A table of texts as a file by RFC 4180, in UTF-8. */
record CsvTable(List<String> header, List<List<String>> rows) {
  private static final String LINE_END = "\r\n";

  static CsvTable read(Path file) throws IOException {
    List<List<String>> lines = parse(Files.readString(file, StandardCharsets.UTF_8));
    return new CsvTable(lines.get(0), lines.subList(1, lines.size()));
  }

  void write(Path file) throws IOException {
    StringBuilder text = new StringBuilder(line(header));
    rows.forEach(row -> text.append(line(row)));
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  List<String> column(String name) {
    int column = header.indexOf(name);
    return rows.stream().map(row -> row.get(column)).toList();
  }

  private static String line(List<String> fields) {
    return String.join(",", fields.stream().map(CsvTable::quoted).toList()) + LINE_END;
  }

  private static String quoted(String field) {
    boolean plain = field.chars().noneMatch(letter -> "\",\r\n".indexOf(letter) >= 0);
    return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
  }

  private static List<List<String>> parse(String text) {
    List<List<String>> lines = new ArrayList<>();
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean inside = false;
    for (int index = 0; index < text.length(); index++) {
      char letter = text.charAt(index);
      if (letter == '"') {
        boolean doubled = inside && text.startsWith("\"\"", index);
        if (doubled) {
          field.append(letter);
          index++;
        } else {
          inside = !inside;
        }
      } else if (!inside && letter == ',') {
        fields.add(field.toString());
        field.setLength(0);
      } else if (!inside && text.startsWith(LINE_END, index)) {
        fields.add(field.toString());
        lines.add(fields);
        fields = new ArrayList<>();
        field.setLength(0);
        index++;
      } else {
        field.append(letter);
      }
    }
    return lines;
  }
}
